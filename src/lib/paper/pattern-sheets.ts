// The whole pattern of a draft as sheets: a cover with the page map, then each piece in turn.
import type { AnyDraft } from '../drafting/style.ts';
import { coverCount, coverSheets, type CoverOptions } from './cover.ts';
import { patternDrawing } from './pattern.ts';
import { patternPieces, pieceTitle, sizeWords, type PatternPiece } from './pattern-piece.ts';
import type { Sheet } from './sheet.ts';
import { tileCount, tileDrawing, tileSheets } from './tile.ts';

export interface SheetsOfPiece {
	readonly pattern: PatternPiece;
	/** The number of its first sheet, and how many it takes. */
	readonly first: number;
	readonly count: number;
}

export function patternSheets(draft: AnyDraft, options: CoverOptions): readonly Sheet[] {
	const patterns = patternPieces(draft.pieces);
	const drawings = patterns.map((pattern) => patternDrawing(pattern, draft, options));
	const tilings = drawings.map((drawing) => tileDrawing(drawing, options.paper, options.join));
	const places = placesOf(patterns, tilings.map(({ tiles }) => tiles.length));
	const of = sheetsIn(places);
	const shown = places.map((place, i) => ({ ...place, drawing: drawings[i]!, tiling: tilings[i]! }));
	return [
		...coverSheets(draft, shown, of, options),
		...shown.flatMap(({ pattern, tiling, first }) => tileSheets(tiling, { ...options, size: sizeWords(options.scale), title: pieceTitle(pattern.piece), first, of }))
	];
}

/** Which sheets each piece is on: said before it is printed. */
export const sheetsOfPieces = (draft: AnyDraft, options: CoverOptions): readonly SheetsOfPiece[] => {
	const patterns = patternPieces(draft.pieces);
	return placesOf(patterns, patterns.map((pattern) => tileCount(patternDrawing(pattern, draft, options), options.paper, options.join)));
};
export const patternSheetCount = (draft: AnyDraft, options: CoverOptions): number => sheetsIn(sheetsOfPieces(draft, options));

function placesOf(patterns: readonly PatternPiece[], counts: readonly number[]): readonly SheetsOfPiece[] {
	let first = coverCount(patterns) + 1;
	return patterns.map((pattern, i) => {
		const place = { pattern, first, count: counts[i]! };
		first += place.count;
		return place;
	});
}
const sheetsIn = (places: readonly SheetsOfPiece[]): number => {
	const last = places.at(-1);
	if (!last) throw new Error('a pattern of no pieces');
	return last.first + last.count - 1;
};
