// The trade's words, each said once in plain words (UK terms). A lesson links a word to its meaning with Term.
import type { Part } from './part.ts';

export interface Term {
	readonly word: string;
	readonly means: string;
}

export type Terms = Readonly<Record<string, Term>>;

export const terms: Terms = {
	'waist-line': { word: 'waist line', means: 'The line where skirt and band are sewn together.' },
	ease: { word: 'ease', means: 'Extra length in the cloth so that you can move and breathe.' },
	'seam-allowance': { word: 'seam allowance', means: 'The strip of cloth between the stitch line and the cut edge.' },
	'hem-allowance': { word: 'hem allowance', means: 'The strip of cloth below the hem fold, turned up inside.' },
	'cut-line': { word: 'cut line', means: 'Where the shears go. A solid line in our drawings.' },
	'stitch-line': { word: 'stitch line', means: 'Where the needle goes. A dashed line in our drawings. Also called the sewing line.' },
	grain: { word: 'grain', means: 'The direction of the threads. The straight grain runs along the selvedge.' },
	crosswise: { word: 'crosswise grain', means: 'The threads that run from selvedge to selvedge.' },
	selvedge: { word: 'selvedge', means: 'The firm woven edge down each side of the cloth.' },
	bias: { word: 'bias', means: 'The slanting direction between the two grains. Cloth stretches most at 45 degrees.' },
	fold: { word: 'fold', means: 'A bent edge of cloth. A piece cut on it comes out double, with no seam there.' },
	'right-side': { word: 'right side', means: 'The face of the cloth that shows when the skirt is worn.' },
	'wrong-side': { word: 'wrong side', means: 'The face of the cloth that lies inside.' },
	staystitch: { word: 'staystitch', means: 'A row of stitches through one layer. It keeps a curved edge from stretching.' },
	tack: { word: 'tack', means: 'To sew by hand with long stitches that come out later. Also called baste.' },
	interfacing: { word: 'interfacing', means: 'A stiffening cloth fused or sewn to the wrong side.' },
	fuse: { word: 'fuse', means: 'To stick interfacing to cloth with the heat of an iron.' },
	underlap: { word: 'underlap', means: 'The end of the band that lies under the other end and holds the bar.' },
	notch: { word: 'notch', means: 'A small snip or mark on a cut edge. It meets its partner on the next piece.' },
	unpick: { word: 'unpick', means: 'To take stitches out again.' },
	backstitch: { word: 'backstitch', means: 'To sew a few stitches back over a seam so that its end holds.' },
	neaten: { word: 'neaten', means: 'To cover a raw edge with stitches so that it does not fray.' },
	fell: { word: 'fell', means: 'To sew a folded edge down by hand with small slanting stitches.' },
	grade: { word: 'grade', means: 'To trim the layers of a seam to different widths so that it lies flat.' },
	easestitch: { word: 'easestitch', means: 'A row of stitches whose thread draws extra cloth in without folds.' },
	level: { word: 'level the hem', means: 'To trim the hem so that it is the same height from the floor all round.' },
	'finger-press': { word: 'finger press', means: 'To crease cloth with a fingernail, without an iron.' },
	'top-stop': { word: 'top stop', means: 'The small piece at the top of a zip that the slider cannot pass.' },
	'thread-chain': { word: 'thread chain', means: 'A short cord looped from sewing thread. It holds two hems together loosely.' },
	share: { word: 'share', means: 'How much of a full circle the skirt takes. Half a circle is a share of one half.' }
};

/** The terms that a part's text links, and no others: a page carries them as data. */
export function termsOf(part: Part): Terms {
	const names = part.uses.flatMap(({ name, attributes }) => (name === 'Term' && attributes.of && terms[attributes.of] ? [attributes.of] : []));
	return Object.fromEntries(names.map((name) => [name, terms[name]!]));
}
