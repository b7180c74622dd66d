import { stripPieces, type StripBand } from '../band/strip.ts';
import type { Body } from '../body.ts';
import { startPlace } from '../closure.ts';
import type { DraftOf } from '../draft.ts';
import { landmarksOf } from '../panel.ts';
import { ok, refuse, type Result } from '../result.ts';
import { pleatedChecks, type PleatedCheck } from './checks.ts';
import { knownBody, pleatedObstacles, readingsMissing } from './cuttable.ts';
import { pleatedFigures, type KnownBody, type PleatedFigures } from './figures.ts';
import { pleatPanels, pleatPieces } from './pieces.ts';
import { pleatedSeams } from './seams.ts';
import type { PleatedSkirt } from './skirt.ts';

export interface PleatedDraft extends DraftOf<PleatedSkirt, PleatedFigures, PleatedCheck, KnownBody> {}
export type Drafted = Omit<PleatedDraft, 'checks'>;

/** Checked choices → everything that can be told about a pleated skirt, or what stands in the way. */
export function draftPleated(measured: Body, skirt: PleatedSkirt): Result<PleatedDraft> {
	const body = knownBody(measured);
	if (!body) return refuse(...readingsMissing(measured));
	const inTheWay = pleatedObstacles(body, skirt);
	if (inTheWay.length > 0) return refuse(...inTheWay);
	const figures = pleatedFigures(body, skirt);
	const panels = pleatPanels(figures);
	const band: StripBand = {
		kind: 'straight', depth: skirt.band.depth, underlap: skirt.band.underlap, ring: false, seam: figures.waistSeamGirth,
		zipAt: skirt.zipAt, start: startPlace(skirt.zipAt), landmarks: landmarksOf([]), allowances: skirt.allowances
	};
	const pieces = [...pleatPieces(panels, figures, skirt), ...stripPieces(band)];
	const drafted: Drafted = { unit: 'mm', body, skirt, figures, pieces, seams: pleatedSeams(panels, figures, pieces, skirt, band) };
	return ok({ ...drafted, checks: pleatedChecks(drafted) });
}
