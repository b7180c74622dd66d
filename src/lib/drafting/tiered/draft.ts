import { stripPieces, type StripBand } from '../band/strip.ts';
import type { Body } from '../body.ts';
import { startPlace } from '../closure.ts';
import type { DraftOf } from '../draft.ts';
import { landmarksOf } from '../panel.ts';
import { ok, refuse, type Result } from '../result.ts';
import { tieredChecks, type TieredCheck } from './checks.ts';
import { tieredObstacles } from './cuttable.ts';
import { tieredFigures, type TieredFigures } from './figures.ts';
import { tierPieces } from './pieces.ts';
import { tieredSeams } from './seams.ts';
import type { TieredSkirt } from './skirt.ts';

export interface TieredDraft extends DraftOf<TieredSkirt, TieredFigures, TieredCheck> {}
export type Drafted = Omit<TieredDraft, 'checks'>;

/** Checked choices → everything that can be told about a skirt in gathered tiers, or what stands in the way. */
export function draftTiered(body: Body, skirt: TieredSkirt): Result<TieredDraft> {
	const inTheWay = tieredObstacles(body, skirt);
	if (inTheWay.length > 0) return refuse(...inTheWay);
	const figures = tieredFigures(body, skirt);
	const band: StripBand = {
		kind: skirt.band.kind, depth: skirt.band.depth, underlap: skirt.band.underlap, ring: skirt.band.kind === 'elastic', seam: figures.waistSeamGirth,
		zipAt: skirt.zipAt, start: startPlace(skirt.zipAt), landmarks: landmarksOf([]), allowances: skirt.allowances
	};
	const pieces = [...tierPieces(figures, skirt), ...stripPieces(band)];
	const drafted: Drafted = { unit: 'mm', body, skirt, figures, pieces, seams: tieredSeams(figures, pieces, skirt, band) };
	return ok({ ...drafted, checks: tieredChecks(drafted) });
}
