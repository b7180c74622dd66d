// The whole pattern of a draft as sheets: a cover with the page map, then each piece in turn.
import type { Draft } from '../drafting/draft.ts';
import { coverSheet } from './cover.ts';
import { patternDrawing, patternPieces, pieceTitle } from './pattern.ts';
import type { PaperName, Sheet } from './sheet.ts';
import { tileDrawing, tileSheets, type Tiling } from './tile.ts';

export interface PatternOptions {
	readonly paper: PaperName;
	readonly unit: 'cm' | 'in';
	/** A class code and a learner's initial, never a name. */
	readonly code: string;
	/** `2026-11-25` */
	readonly date: string;
}

export function patternSheets(draft: Draft, options: PatternOptions): readonly Sheet[] {
	const patterns = patternPieces(draft.pieces);
	const drawings = patterns.map((pattern) => patternDrawing(pattern, draft, options));
	const tilings = drawings.map((drawing) => tileDrawing(drawing, options.paper));
	const of = sheetsIn(tilings);
	let first = 2;
	const shown = patterns.map((pattern, i) => {
		const entry = { pattern, drawing: drawings[i]!, tiling: tilings[i]!, first };
		first += tilings[i]!.tiles.length;
		return entry;
	});
	return [
		coverSheet(draft, shown, of, options),
		...shown.flatMap(({ pattern, tiling, first }) => tileSheets(tiling, { ...options, title: pieceTitle(pattern.piece), first, of }))
	];
}

const sheetsIn = (tilings: readonly Tiling[]): number => tilings.reduce((sum, { tiles }) => sum + tiles.length, 1);

/** How many sheets the pattern takes, the cover among them: said before it is printed. */
export const patternSheetCount = (draft: Draft, options: PatternOptions): number =>
	sheetsIn(patternPieces(draft.pieces).map((pattern) => tileDrawing(patternDrawing(pattern, draft, options), options.paper)));
