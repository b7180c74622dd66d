// What a pattern says of a piece: its title, how many are cut, in which cloth, at which scale.
import type { Outline } from '../drafting/geometry/outline.ts';
import type { Piece } from '../drafting/piece.ts';
import type { AnyDraft } from '../drafting/style.ts';
import { shareWords } from './page.ts';

/** A piece to print, and what else is cut from the same sheets. */
export interface PatternPiece {
	readonly piece: Piece;
	readonly also: readonly Piece[];
}

/** So many mm of cloth to a mm of paper: true size, or smaller to practise drafting on. */
export const SCALES = [1, 4, 5] as const;
export type Scale = (typeof SCALES)[number];
export const sizeWords = (scale: Scale): string => (scale === 1 ? 'true size' : `1 : ${scale}, for practice, not to cut from`);

const CLOTHS = { shell: 'skirt cloth', lining: 'lining', interfacing: 'interfacing' } as const;
const runOf = ({ start, edges }: Outline): unknown => [start, edges.map(({ end, centre, turn }) => [end, centre, turn])];
const shapeOf = ({ cut, stitch, hole }: Piece): string => JSON.stringify([cut, stitch, ...(hole ? [hole.cut, hole.stitch] : [])].map(runOf));
/** Every shape once: interfacing that matches the band is said on the band, not printed again. */
export function patternPieces(pieces: readonly Piece[]): readonly PatternPiece[] {
	const patterns: { piece: Piece; also: Piece[] }[] = [];
	for (const piece of pieces) {
		const same = patterns.find((other) => shapeOf(other.piece) === shapeOf(piece));
		if (same) same.also.push(piece);
		else patterns.push({ piece, also: [] });
	}
	return patterns;
}

export function pieceTitle({ name, cloth }: Piece): string {
	const title = name.replace(/[-_]/g, ' ').replace(/^panel tier/, 'tier');
	if (/^panel/.test(title) && cloth === 'shell') return title === 'panel' ? 'Skirt' : `Skirt ${title}`;
	return title.charAt(0).toUpperCase() + title.slice(1);
}

const cutWords = ({ count, cloth, fold }: Piece, whole: boolean): string => `cut ${count} in ${CLOTHS[cloth]}${fold && !whole ? ', on the fold' : ''}`;
export const countWords = ({ piece, also }: PatternPiece, whole = false): string => [piece, ...also].map((p) => cutWords(p, whole)).join('; ');

/** What kind of skirt it is, in the trade's words. */
export function skirtWords({ skirt }: AnyDraft): string {
	if (skirt.style === 'flared') return shareWords(skirt.share);
	if (skirt.style === 'pleated') return `${skirt.pleats} ${skirt.kind} pleats`;
	return skirt.tiers === 1 ? 'gathered skirt' : `${skirt.tiers} gathered tiers`;
}
