import type { Body } from '../body.ts';
import type { Piece } from '../piece.ts';
import { ok, refuse, type Result } from '../result.ts';
import type { Seam } from '../seam.ts';
import { tieredChecks, type TieredCheck } from './checks.ts';
import { tieredObstacles } from './cuttable.ts';
import { tieredFigures, type TieredFigures } from './figures.ts';
import { tierPieces } from './pieces.ts';
import { tieredSeams } from './seams.ts';
import type { TieredSkirt } from './skirt.ts';
import { waistbandPieces } from './waistband.ts';

export interface TieredDraft {
	readonly unit: 'mm';
	readonly body: Body;
	readonly skirt: TieredSkirt;
	readonly figures: TieredFigures;
	readonly pieces: readonly Piece[];
	readonly seams: readonly Seam[];
	readonly checks: readonly TieredCheck[];
}
export type Drafted = Omit<TieredDraft, 'checks'>;

/** Checked choices → everything that can be told about a skirt in gathered tiers, or what stands in the way. */
export function draftTiered(body: Body, skirt: TieredSkirt): Result<TieredDraft> {
	const inTheWay = tieredObstacles(body, skirt);
	if (inTheWay.length > 0) return refuse(...inTheWay);
	const figures = tieredFigures(body, skirt);
	const band = { band: skirt.band, seam: figures.waistSeamGirth, zipAt: skirt.zipAt, allowances: skirt.allowances };
	const pieces = [...tierPieces(figures, skirt), ...waistbandPieces(band)];
	const drafted: Drafted = { unit: 'mm', body, skirt, figures, pieces, seams: tieredSeams(figures, pieces, skirt, band) };
	return ok({ ...drafted, checks: tieredChecks(drafted) });
}
