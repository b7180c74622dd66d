// Rescues: each option's number is worked out again here, from the skirt as it would lie on the table, and must clear the fault.
import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Body } from '../../../src/lib/drafting/body.ts';
import { draftSkirt, type Draft } from '../../../src/lib/drafting/draft.ts';
import { changed, optionCodes, type OptionCode, type RescueOption } from '../../../src/lib/drafting/made/option.ts';
import type { AsMade } from '../../../src/lib/drafting/made/reading.ts';
import { rescueCodes, type RescueCode } from '../../../src/lib/drafting/made/rescue-code.ts';
import { lookCodes, rescue, rescuePaths, rescuesAt, type RescueDraft } from '../../../src/lib/drafting/made/rescue.ts';
import { anySkirt, ansurBody, nhanesBody, seeded, type MeasuredBody } from '../bodies.ts';
import { bodies } from '../sound.ts';
import { chordPoints, walked } from '../measured.ts';
import { draftOf } from './sample.ts';
import { wrong } from './wrong.ts';

const half = draftOf();
const full = draftOf({ share: 1, panels: 2 });
function rescued(code: RescueCode, draft: Draft, readings: AsMade): RescueDraft {
	const found = rescue(code, draft, readings);
	if (!found.ok) throw new Error(JSON.stringify(found.issues));
	return found.value;
}
function option(code: OptionCode, { options }: RescueDraft): RescueOption {
	const found = options.find((one) => one.code === code);
	if (!found) throw new Error(`no ${code} among ${options.map((one) => one.code).join(', ')}`);
	return found;
}
const codesOf = ({ options }: RescueDraft): readonly OptionCode[] => options.map(({ code }) => code);
function refusalOf(code: RescueCode, draft: Draft, readings: AsMade): string {
	const found = rescue(code, draft, readings);
	return found.ok ? 'taken' : found.issues.map((issue) => `${issue.code} ${issue.path}`).join('; ');
}

test('A waist cut 10 mm too small is sewn 3.2 mm deeper on half a circle and 1.6 mm on a full one', () => {
	// 10/π = 3.183, so 18.183 from the edge; 10/2π = 1.592 (circle geometry).
	const deeper = option('sew-deeper', rescued('waist-cut-small', half, { waistSeamAfterSewing: 690 }));
	expect(deeper.figures.deeper).toBeCloseTo(3.183, 3);
	expect(deeper.figures.fromEdge).toBeCloseTo(18.183, 3);
	expect(option('sew-deeper', rescued('waist-cut-small', full, { waistSeamAfterSewing: 690 })).figures.deeper).toBeCloseTo(1.592, 3);
});

test('An allowance forgotten on a full circle of 70 cm sews to 79.42', () => {
	// Check value 4: 2π·(11.141 + 1.5) = 79.42 (circle geometry).
	const { planned, made, fault } = rescued('allowance-forgotten', full, {});
	expect(made / 10).toBeCloseTo(79.42, 2);
	expect(planned).toBe(700);
	expect(fault / 10).toBeCloseTo(9.42, 2);
	// On a half: 700 + 15π = 747.12. What is left is a sector of 700/(222.817 + 15) = 2.9435 rad, 0.4685 of a circle;
	// two edges come in by 47.12/2 = 23.56 at the waist and (822.817·(π − 2.9435))/2 = 81.51 at the hem (circle geometry).
	const taken = option('take-in', rescued('allowance-forgotten', half, {})).figures;
	expect(taken.share).toBeCloseTo(0.4685, 4);
	expect(taken.atWaist).toBeCloseTo(23.56, 2);
	expect(taken.atHem).toBeCloseTo(81.51, 1);
	expect(taken.skirtLength).toBeCloseTo(585, 9);
});

test('A waist cut 10 mm too large is eased in, or sewn 3.2 mm nearer to the edge', () => {
	const found = rescued('waist-cut-large', half, { waistSeamAfterSewing: 710 });
	expect(codesOf(found)).toEqual(['ease-in', 'sew-nearer-edge', 'take-in', 'more-ease', 'cut-panel-again']);
	// 15 − 10/π = 11.817
	expect(option('sew-nearer-edge', found).figures.allowance).toBeCloseTo(11.817, 3);
	// 700 + 30 + 2·15 + 10; 600 − 10/π
	expect(option('more-ease', found).figures.bandCutLength).toBeCloseTo(770, 9);
	expect(option('more-ease', found).draft!.figures.skirtLength).toBeCloseTo(596.817, 3);
});

test('A nick that ends 3 mm inside the stitch line holds; one past it is sewn below', () => {
	expect(codesOf(rescued('nick-near-waist', half, { nickDepth: 12 }))[0]).toBe('hold-in-allowance');
	// 15 + 3 − 15 = 3 mm deeper: 3π = 9.42 to ease in (circle geometry).
	const eased = option('lower-and-ease-in', rescued('nick-near-waist', half, { nickDepth: 15 }));
	expect(eased.figures.deeper).toBe(3);
	expect(eased.figures.ease).toBeCloseTo(9.42, 2);
	// 20 + 3 − 15 = 8: 25.1 mm is more than eases in.
	expect(codesOf(rescued('nick-near-waist', half, { nickDepth: 20 }))).toEqual(['lower-and-take-in', 'lower-and-more-ease', 'cut-panel-again']);
});

test('A nick near the hem is shut in, or the hem is made narrower, or the skirt shorter', () => {
	expect(codesOf(rescued('nick-near-hem', half, { nickDepth: 8 }))).toEqual(['hold-in-hem', 'narrower-hem', 'cut-panel-again']);
	expect(option('narrower-hem', rescued('nick-near-hem', half, { nickDepth: 8 })).figures.hem).toBe(7);
	const deep = rescued('nick-near-hem', half, { nickDepth: 40 });
	// 40 + 3 − 15 = 28: 640 − 28; or all of it, 640 − 40
	expect(option('shorter-nick-in-hem', deep).figures.length).toBe(612);
	expect(option('shorter', deep).figures.length).toBe(600);
});

test('A panel 20 mm short is faced, set on a deeper band, or the skirt made shorter', () => {
	// Planned 600 + 15 + 15 = 630 between its cut edges.
	const found = rescued('panel-short', half, { panelLength: 610 });
	expect(found).toMatchObject({ planned: 630, fault: 20 });
	// A facing gives back 15 − 6 = 9, so 11 is lost; the band grows to 60, cut 2·60 + 2·15.
	expect(option('faced-hem', found).figures).toMatchObject({ shorter: 11, length: 629 });
	expect(option('deeper-band', found).figures).toMatchObject({ depth: 60, bandCutDepth: 150 });
	expect(option('shorter', found).figures.length).toBe(620);
});

test('A zip of 20 cm where 20.82 is needed leaves 8 mm to close by hand, or takes 2 cm less ease', () => {
	// Check value 10: 98 cm to pass needs 20.82 on a half circle.
	const found = rescued('zip-short', half, { zipBought: 200 });
	expect(option('longer-slit', found).figures.gap).toBeCloseTo(8.2, 1);
	expect(option('buy-longer', found).figures.zipLength).toBe(220);
	const less = option('less-hip-ease', found).draft!;
	expect(less.figures.zipLength).toBe(200);
	expect(less.figures.openingBelowSeam).toBeCloseTo(200, 6);
});

test('A zip of 30 cm where 22 does is stopped at 22 cm, or the slit made longer', () => {
	const found = rescued('zip-long', half, { zipBought: 300 });
	// 220 + 20 of tape; 220 + 5 below the seam. 300 + 5 leaves 295 of seam.
	expect(option('shorten-zip', found).figures).toEqual({ stop: 220, cut: 240, over: 80, zipEnd: 225 });
	expect(option('longer-opening', found).figures).toEqual({ zipEnd: 305, seam: 295 });
});

test('A band 10 mm short: narrower ends, a smaller underlap, or a piece of 40 mm', () => {
	// Planned 700 + 30 + 2·15 = 760. 15 − 5; 30 − 10; 10 + 2·15.
	const found = rescued('band-short', half, { bandLength: 750 });
	expect(option('narrower-ends', found).figures.allowance).toBe(10);
	expect(option('smaller-underlap', found).figures.underlap).toBe(20);
	expect(option('piece-on', found).figures.piece).toBe(40);
	// With 20 mm of ease to give, 10 of it goes: π·x = 10.
	const eased = option('band-less-ease', rescued('band-short', draftOf({ waistEase: 20 }), { bandLength: 770 }));
	expect(eased.figures).toMatchObject({ waistEase: 10, waistSeam: 710 });
	expect(eased.figures.nearer).toBeCloseTo(3.183, 3);
});

test('A band 20 mm tight goes lower with a new band; one 20 mm loose is taken in', () => {
	// 20/π = 6.366 deeper; 760 + 20.
	const tight = option('lower-with-new-band', rescued('band-tight', half, { bandWanted: 720 }));
	expect(tight.figures).toMatchObject({ waistSeam: 720, bandCutLength: 780 });
	expect(tight.figures.deeper).toBeCloseTo(6.366, 3);
	// Two edges, 10 mm each at the waist; share 0.5·680/700 = 0.4857.
	const loose = option('take-in', rescued('band-loose', draftOf({ waistEase: 20 }, { waist: 680, hip: 930, waistToHip: 200 }), { bandWanted: 680 }));
	expect(loose.figures.atWaist).toBe(10);
	expect(loose.figures.share).toBeCloseTo(0.4857, 4);
});

test('A lining: 10 mm tight is sewn 3.2 mm deeper; 15 mm long is trimmed by 15 or tucked by 7.5', () => {
	expect(option('sew-lining-deeper', rescued('lining-tight', half, { liningWaist: 690 })).figures.deeper).toBeCloseTo(3.183, 3);
	// 25 above was planned and 10 is there.
	const long = rescued('lining-long', half, { liningAbove: 10 });
	expect(option('trim-lining', long).figures.trim).toBe(15);
	expect(option('tuck-lining', long).figures).toMatchObject({ tuck: 7.5, takesUp: 15 });
	expect(codesOf(long)).not.toContain('leave-lining');
	expect(option('leave-lining', rescued('lining-long', half, { liningAbove: 18 })).draft!.skirt.lining).toEqual({ shorterBy: 18, share: null });
	expect(rescued('lining-long', half, { liningAbove: -5 }).fault).toBe(30);
});

// Invented floor readings to the cut edge.
const floor = [300, 296, 282, 294, 299, 295, 283, 297].map((distance, i) => ({ place: i / 8, distance }));

test('A hem that dips is cut to its highest place, to a chosen height, or with a narrower hem', () => {
	const found = rescued('hem-dips', half, { floor, hemAbove: 325 });
	expect(option('level-lowest', found).figures.above).toBe(315);
	expect(option('level-lowest', found).trims!.map(({ trim }) => trim)).toEqual([0, 4, 18, 6, 1, 5, 17, 3]);
	expect(option('level-chosen', found).trims!.map(({ trim }) => trim)).toEqual([10, 14, 28, 16, 11, 15, 27, 13]);
	// The same cut at 300, folded at 6: 9 mm longer.
	expect(option('level-narrow', found).figures).toMatchObject({ above: 306, lower: 9, hem: 6 });
	expect(codesOf(rescued('hem-dips', half, { floor }))).toEqual(['level-lowest', 'level-narrow']);
});

test('Cloth that shrank to 80 cm: two panels, less flare or a skirt of 58.7 cm', () => {
	const found = rescued('cloth-short', half, { clothAfterWashing: { width: 800, length: 2600 } });
	// 800 − 222.817 − 30 = 547.18, and the band's 40 (circle geometry).
	expect(option('shorter', found).figures.length).toBeCloseTo(587.18, 2);
	expect(found.fault).toBeCloseTo(52.82, 2);
	expect(codesOf(found)).toContain('more-panels');
	// 10 mm less is wanted than the hem can spare: 15 − 9 = 6 where 3 is short.
	const close = rescued('cloth-short', half, { clothAfterWashing: { width: 849.8167, length: 2600 } });
	expect(option('narrower-hem', close).figures.hem).toBeCloseTo(12, 3);
});

test('What isn’t read, isn’t wrong or isn’t there is refused by name', () => {
	expect(refusalOf('waist-cut-large', half, {})).toBe('reading-missing asMade.radiusDrawn');
	expect(refusalOf('waist-cut-large', half, { waistSeamAfterSewing: 690 })).toBe('nothing-to-mend asMade.waistSeamAfterSewing');
	expect(refusalOf('lining-long', draftOf({ lining: null }), { liningAbove: 3 })).toBe('no-lining skirt.lining');
	expect(refusalOf('zip-short', draftOf({}, { waist: 700 }), { zipBought: 200 })).toBe('hip-needed body.hip');
	expect(refusalOf('nick-near-hem', half, { nickDepth: NaN })).toBe('length-out-of-range asMade.nickDepth');
	expect(refusalOf('hem-dips', half, { floor: floor.slice(1) })).toBe('floor-places asMade.floor');
	// A slip in a reading that isn't asked for doesn't stand in the way.
	expect(refusalOf('band-short', half, { bandLength: 740, zipBought: NaN })).toBe('taken');
});

test('Every rescue shows at a stage of the lesson, and every stage where something is made has one', () => {
	const folder = 'content/lessons/01-lined-half-circle';
	const stages = readdirSync(folder).filter((name) => name !== 'lesson.md').map((name) => readFileSync(`${folder}/${name}`, 'utf8'))
		.filter((text) => /^kind: stage$/m.test(text)).map((text) => /^id: (\S+)$/m.exec(text)![1]!);
	expect(Object.keys(rescuePaths).sort()).toEqual([...rescueCodes].sort());
	for (const code of rescueCodes) {
		const path = rescuePaths[code];
		expect(path.code).toBe(code);
		expect(path.stages.filter((stage) => !stages.includes(stage))).toEqual([]);
		expect(path.stages.length).toBeGreaterThan(0);
		expect(path.look.length).toBeGreaterThan(1);
	}
	expect(stages.filter((stage) => rescuesAt(stage).length === 0)).toEqual([]);
	expect([...new Set(Object.values(rescuePaths).flatMap(({ look }) => look))].sort()).toEqual([...lookCodes].sort());
});

// --- Any body and skirt -------------------------------------------------------------------------------------------

const within = (value: number, expected: number, what: string, slack = 0.01): void => {
	if (!(Math.abs(value - expected) <= slack)) throw new Error(`${what}: ${value} in place of ${expected}`);
};
const atLeast = (value: number, least: number, what: string): void => {
	if (!(value >= least - 0.01)) throw new Error(`${what}: ${value} is less than ${least}`);
};
/** Round the waist or hem of a drafted skirt, walked along its outlines. */
function round({ pieces }: Draft, edge: 'waist' | 'hem'): number {
	return pieces.filter(({ name, cloth }) => cloth === 'shell' && /^(panel|front|back)/.test(name)).reduce((sum, { count, stitch }) => sum + count * walked(stitch, edge), 0);
}
const bandSewn = ({ pieces, skirt }: Draft): number => walked(pieces.find(({ name }) => name === 'band')!.stitch, 'waist') - skirt.band.underlap;
function panelFits({ pieces, skirt }: Draft, { width, length }: { readonly width: number; readonly length: number }): boolean {
	const panel = pieces.find(({ name, cloth }) => cloth === 'shell' && /^(panel|front|back)/.test(name))!;
	let [from, x0, x1, y0, y1] = [panel.cut.start, Infinity, -Infinity, Infinity, -Infinity];
	for (const edge of panel.cut.edges) {
		for (const [x, y] of chordPoints(from, edge)) [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
		from = edge.end;
	}
	const fits = (wide: number, high: number): boolean => {
		const inRow = Math.floor((width + 0.1) / wide);
		return inRow > 0 && Math.ceil(skirt.panels / inRow) * high <= length + 0.1 * skirt.panels;
	};
	return fits(x1 - x0, y1 - y0) || fits(y1 - y0, x1 - x0);
}

/** The skirt as it lies on the table: a sector of the planned sweep whose waist is cut on a circle of radius `edge`. */
interface Table {
	readonly draft: Draft;
	readonly found: RescueDraft;
	readonly readings: AsMade;
}
/** For each way, the sum that shows the fault gone. θ, G and the allowances are taken from the choices, not from figures. */
function clears({ draft, found, readings }: Table, one: RescueOption): void {
	const { body, skirt } = draft;
	const sweep = 2 * Math.PI * skirt.share;
	const seam = body.waist + skirt.waistEase;
	const { waist: a, seam: s } = skirt.allowances;
	const f = one.figures as Record<string, number>;
	const again = one.draft;
	const { code } = one;
	// Cut edge of the waist as it is, for the rescues that are about its length.
	const cutEdge = found.made / sweep - a;
	const hemAt = seam / sweep + skirt.length - skirt.band.depth;
	const sewnAt = (fromEdge: number): number => sweep * (cutEdge + fromEdge);
	// What is said of the new skirt is what the new draft has.
	if (again && f.skirtLength !== undefined) within(again.figures.skirtLength, f.skirtLength, `${code} length`);
	if (f.edges !== undefined) expect(f.edges).toBe(2 * skirt.panels);
	switch (code) {
		case 'ease-in': within(found.made - f.ease!, seam, code); atLeast(10, f.ease!, code); break;
		case 'sew-nearer-edge': within(sewnAt(f.allowance!), seam, code); atLeast(f.allowance!, 6, code); break;
		case 'sew-nearer-and-ease': within(sewnAt(f.allowance!) - f.ease!, seam, code); atLeast(10, f.ease!, code); break;
		case 'sew-deeper': within(sewnAt(f.fromEdge!), seam, code); within(f.fromEdge! - a, f.deeper!, code); break;
		case 'let-out': {
			// Each edge lies a strip further out: arcsin(w/ρ) of the circle of radius ρ.
			const radius = found.made / sweep;
			within(found.made + f.edges! * radius * Math.asin(f.perEdge! / radius), seam, code);
			within(f.perEdge! + f.allowance!, s, code);
			atLeast(f.allowance!, 10, code);
			break;
		}
		case 'more-ease': case 'less-ease': {
			within(round(again!, 'waist'), found.made, code);
			within(bandSewn(again!), found.made, code);
			// The hem stays where it is cut, but where only the edge stretched.
			if (found.code !== 'waist-stretched') within(again!.figures.hemRadius, hemAt, `${code} hem`);
			within(f.bandCutLength!, found.made + skirt.band.underlap + 2 * s, code);
			break;
		}
		case 'take-in': {
			const target = found.code === 'band-loose' ? readings.bandWanted! : seam;
			within(round(again!, 'waist'), target, code);
			within(again!.figures.hemRadius, hemAt, `${code} hem`);
			// What is left after the wedges are gone, at the waist and at the hem.
			within((found.code === 'band-loose' ? seam : found.made) - f.edges! * f.atWaist!, target, code);
			within(sweep * hemAt - f.edges! * f.atHem!, round(again!, 'hem'), code);
			break;
		}
		case 'hold-in-allowance': within(readings.nickDepth! + f.left!, a, code); atLeast(f.left!, 3, code); break;
		case 'lower-and-ease-in': case 'lower-and-take-in': case 'lower-and-more-ease': {
			atLeast(f.fromEdge!, readings.nickDepth! + 3, code);
			const radius = seam / sweep - a + f.fromEdge!;
			if (code === 'lower-and-ease-in') within(sweep * radius - f.ease!, seam, code);
			else {
				within(again!.figures.waistRadius, radius, code);
				within(again!.figures.hemRadius, hemAt, code);
				within(round(again!, 'waist'), code === 'lower-and-take-in' ? seam : sweep * radius, code);
			}
			within(again!.figures.skirtLength, hemAt - radius, code);
			break;
		}
		case 'hold-in-hem': within(readings.nickDepth! + f.left!, skirt.hem, code); atLeast(f.left!, 3, code); break;
		case 'narrower-hem':
			within(again!.skirt.length, skirt.length, code);
			if (found.code === 'cloth-short') expect(panelFits(again!, readings.clothAfterWashing!)).toBe(true);
			// The cut edge lies above the nick, or where the short panel ends.
			else atLeast(hemAt + skirt.hem - (found.code === 'panel-short' ? found.fault : readings.nickDepth!), again!.figures.cutHemRadius, code);
			break;
		case 'shorter': case 'shorter-nick-in-hem': {
			within(again!.skirt.length, f.length!, code);
			if (found.code === 'cloth-short') expect(panelFits(again!, readings.clothAfterWashing!)).toBe(true);
			else if (found.code === 'panel-short') within(again!.figures.cutHemRadius - again!.figures.cutWaistRadius, readings.panelLength!, code);
			else {
				// How far the nick reaches past the new cut edge: into the hem by 3 mm less than it, or not at all.
				const past = readings.nickDepth! - (hemAt + skirt.hem - again!.figures.cutHemRadius);
				within(past, code === 'shorter' ? 0 : skirt.hem - 3, code);
			}
			break;
		}
		case 'faced-hem': atLeast(readings.panelLength!, again!.figures.cutHemRadius - again!.figures.cutWaistRadius, code); within(again!.skirt.length, skirt.length - f.shorter!, code); break;
		case 'deeper-band':
			within(again!.skirt.length, skirt.length, code);
			within(again!.figures.cutHemRadius - again!.figures.cutWaistRadius, readings.panelLength!, code);
			within(again!.figures.bandCutDepth, f.bandCutDepth!, code);
			break;
		case 'draw-up': within(f.edgeTo! + sweep * a, seam, code); within(f.edgeFrom! + sweep * a, found.made, code); within(f.edgeFrom! - f.edgeTo!, f.by!, code); atLeast(0.05 * f.edgeTo!, f.by!, code); break;
		case 'stay-tape': within(f.tape!, seam, code); within(found.made - f.ease!, f.tape!, code); break;
		case 'buy-longer': atLeast(f.zipLength!, found.planned, code); break;
		case 'longer-slit': within(readings.zipBought! + f.gap!, found.planned, code); atLeast(50, f.gap!, code); break;
		case 'less-hip-ease': atLeast(readings.zipBought!, again!.figures.openingBelowSeam!, code); atLeast(f.hipEase!, 0, code); break;
		case 'shorten-zip': atLeast(skirt.length - skirt.band.depth, f.zipEnd!, code); within(f.stop! + f.over!, readings.zipBought!, code); atLeast(f.stop!, Math.min(draft.figures.openingBelowSeam ?? 0, f.stop!), code); break;
		case 'longer-opening': within(f.zipEnd! + f.seam!, skirt.length - skirt.band.depth, code); atLeast(f.seam!, 50, code); within(f.zipEnd!, readings.zipBought! + 5, code); break;
		case 'trim-at-top': within(readings.zipBought! - f.over!, found.planned, code); break;
		case 'sew-lining-deeper': within(readings.liningWaist! + sweep * f.deeper!, seam, code); within(f.fromEdge! - f.deeper!, a, code); break;
		case 'let-out-lining': {
			const radius = readings.liningWaist! / sweep;
			within(readings.liningWaist! + f.edges! * radius * Math.asin(f.perEdge! / radius), seam, code);
			atLeast(f.allowance!, 6, code);
			break;
		}
		case 'trim-lining': within(readings.liningAbove! + f.trim!, skirt.lining!.shorterBy, code); break;
		case 'deeper-lining-hem': within(readings.liningAbove! + f.hem! - skirt.hem, skirt.lining!.shorterBy, code); break;
		case 'tuck-lining': within(readings.liningAbove! + 2 * f.tuck!, skirt.lining!.shorterBy, code); break;
		case 'leave-lining': atLeast(f.above!, 15, code); within(again!.skirt.lining!.shorterBy, readings.liningAbove!, code); break;
		case 'piece-on': within(readings.bandLength! + f.piece! - 2 * s, seam + skirt.band.underlap + 2 * s, code); break;
		case 'smaller-underlap': within(again!.figures.bandCutLength, readings.bandLength!, code); atLeast(again!.skirt.band.underlap, 20, code); break;
		case 'narrower-ends': within(seam + skirt.band.underlap + 2 * f.allowance!, readings.bandLength!, code); atLeast(f.allowance!, 6, code); break;
		case 'band-less-ease':
			within(again!.figures.bandCutLength, readings.bandLength!, code);
			within(sweep * (seam / sweep - a + f.allowance!), bandSewn(again!), code);
			within(again!.figures.hemRadius, hemAt, code);
			break;
		case 'move-fastening-out': within(seam + (skirt.band.underlap - again!.skirt.band.underlap), readings.bandWanted!, code); atLeast(again!.skirt.band.underlap, 20, code); break;
		case 'move-fastening-in': within(seam + (skirt.band.underlap - again!.skirt.band.underlap), readings.bandWanted!, code); break;
		case 'let-out-zip-seam': {
			const radius = seam / sweep;
			within(seam + 2 * radius * Math.asin(f.perEdge! / radius), readings.bandWanted!, code);
			atLeast(f.allowance!, 10, code);
			// The band is as long as it was: what is sewn and what laps.
			within(again!.skirt.band.underlap + readings.bandWanted!, seam + skirt.band.underlap, code);
			break;
		}
		case 'lower-with-new-band':
			within(bandSewn(again!), readings.bandWanted!, code);
			within(again!.figures.hemRadius, hemAt, code);
			within(again!.figures.waistRadius, seam / sweep + f.deeper!, code);
			break;
		case 'shorter-band': within(f.bandCutLength! - skirt.band.underlap - 2 * s, readings.bandWanted!, code); within(seam - f.ease!, readings.bandWanted!, code); break;
		case 'level-lowest': case 'level-chosen': case 'level-narrow': {
			const heights = readings.floor!.map(({ distance }, i) => distance + one.trims![i]!.trim);
			for (const height of heights) within(height, f.cutEdgeAbove!, code);
			for (const { trim } of one.trims!) atLeast(trim, 0, code);
			within(f.above! - f.hem!, f.cutEdgeAbove!, code);
			break;
		}
		case 'less-flare': case 'more-panels': expect(panelFits(again!, readings.clothAfterWashing!)).toBe(true); within(again!.skirt.length, skirt.length, code); break;
		case 'cut-panel-again': within(sweep * (f.cutWaistRadius! + a), seam, code); within(f.cutHemRadius!, hemAt + skirt.hem, code); break;
		case 'cut-lining-again': within(f.cutHemRadius!, hemAt - skirt.lining!.shorterBy + skirt.hem, code); break;
		case 'cut-band-again': within(f.bandCutLength!, (readings.bandWanted ?? seam) + skirt.band.underlap + 2 * s, code); break;
	}
}

test('On any body and skirt every way that is offered clears its fault, stays finite and never ends in a stop', () => {
	const random = seeded(97);
	const met = new Map<OptionCode, number>();
	const kept = { met: 0, refused: 0 };
	const count = bodies / 4;
	for (let i = 0; i < count; i++) {
		const known: MeasuredBody = i % 2 ? ansurBody(random) : nhanesBody(random);
		const body: Body = i % 10 === 0 ? { waist: known.waist } : known;
		const skirt = anySkirt(random);
		const drafted = draftSkirt(body, i % 3 ? { ...skirt, lining: skirt.lining ?? { shorterBy: 25, share: null }, allowances: { waist: 15, seam: 15 + 5 * (i % 4) } } : skirt);
		if (!drafted.ok) continue;
		const draft = drafted.value;
		for (const code of rescueCodes) {
			const readings = wrong(code, draft, random);
			const result = rescue(code, draft, readings);
			if (!result.ok) {
				kept.refused++;
				expect(['nothing-to-mend', 'no-lining', 'hip-needed', 'no-way-back']).toContain(result.issues[0]!.code);
				if (result.issues[0]!.code === 'no-way-back') expect(code).toBe('cloth-short');
				continue;
			}
			kept.met++;
			const found = result.value;
			for (const one of found.options) {
				met.set(one.code, (met.get(one.code) ?? 0) + 1);
				for (const [name, value] of Object.entries(one.figures)) if (!Number.isFinite(value)) throw new Error(`${code} ${one.code} ${name}: ${value}`);
				if (one.draft?.checks.some(({ severity }) => severity === 'stop')) throw new Error(`${code} ${one.code} stops`);
				if ((one.draft === null) !== (one.changes.length === 0)) throw new Error(`${code} ${one.code}: changes without a draft`);
				try {
					clears({ draft, found, readings }, one);
				} catch (error) {
					throw new Error(`${code} by ${found.fault} → ${one.code} ${JSON.stringify(one.figures)} on ${JSON.stringify([draft.body, draft.skirt, readings])}: ${String(error)}`);
				}
			}
		}
	}
	expect(kept.met).toBeGreaterThan(kept.refused * 2);
	// Every way in the list was offered to someone.
	expect(optionCodes.filter((code) => !met.has(code))).toEqual([]);
});

test('A rescue is plain data that survives JSON', () => {
	for (const code of rescueCodes) {
		const found = rescue(code, half, wrong(code, half, seeded(3)));
		if (!found.ok) throw new Error(`${code} ${JSON.stringify(found.issues)}`);
		expect(JSON.parse(JSON.stringify(found.value))).toEqual(found.value);
	}
});

test('Where lengths differ, a shorter skirt is shorter by as much everywhere', () => {
	const draft = draftOf({ lengths: { front: 600, back: 640 } });
	const shorter = changed(draft, 'shorter', {}, [{ path: 'skirt.length', value: draft.skirt.length - 30 }]);
	expect(shorter).toHaveLength(1);
	const [before, after] = [draft.figures, shorter[0]!.draft!.figures];
	for (const name of ['lengthFront', 'lengthSideLeft', 'lengthBack', 'shortestLength', 'longestLength'] as const) expect(before[name]! - after[name]!).toBeCloseTo(30, 9);
	expect(shorter[0]!.changes.map(({ path }) => path)).toEqual(['skirt.length', 'skirt.lengths.front', 'skirt.lengths.back']);
});
