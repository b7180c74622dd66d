// The pieces of a draft as a cutter or a cutting table takes them: whole, each once, with what is to be known of it.
import type { AnyDraft } from '../drafting/style.ts';
import type { Drawing } from './drawing.ts';
import { patternDrawing, type PatternOptions } from './pattern.ts';
import { pieceTitle } from './pattern-piece.ts';

export interface CutterPiece {
	/** As the draft names it. */
	readonly name: string;
	readonly title: string;
	readonly count: number;
	readonly cloth: 'shell' | 'lining' | 'interfacing';
	/** Never half: there is no cloth folded under a cutter. */
	readonly drawing: Drawing;
}

export const cutterPieces = (draft: AnyDraft, options: PatternOptions): readonly CutterPiece[] => draft.pieces.map((piece) => ({
	name: piece.name, title: pieceTitle(piece), count: piece.count, cloth: piece.cloth, drawing: patternDrawing({ piece, also: [] }, draft, options, true)
}));
