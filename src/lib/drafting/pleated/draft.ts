import type { Body } from '../body.ts';
import type { Piece } from '../piece.ts';
import { ok, refuse, type Result } from '../result.ts';
import type { Seam } from '../seam.ts';
import { waistbandPieces } from '../tiered/waistband.ts';
import { pleatedChecks, type PleatedCheck } from './checks.ts';
import { knownBody, pleatedObstacles, readingsMissing } from './cuttable.ts';
import { pleatedFigures, type KnownBody, type PleatedFigures } from './figures.ts';
import { pleatPanels, pleatPieces } from './pieces.ts';
import { pleatedSeams } from './seams.ts';
import type { PleatedSkirt } from './skirt.ts';

export interface PleatedDraft {
	readonly unit: 'mm';
	readonly body: KnownBody;
	readonly skirt: PleatedSkirt;
	readonly figures: PleatedFigures;
	readonly pieces: readonly Piece[];
	readonly seams: readonly Seam[];
	readonly checks: readonly PleatedCheck[];
}
export type Drafted = Omit<PleatedDraft, 'checks'>;

/** Checked choices → everything that can be told about a pleated skirt, or what stands in the way. */
export function draftPleated(measured: Body, skirt: PleatedSkirt): Result<PleatedDraft> {
	const body = knownBody(measured);
	if (!body) return refuse(...readingsMissing(measured));
	const inTheWay = pleatedObstacles(body, skirt);
	if (inTheWay.length > 0) return refuse(...inTheWay);
	const figures = pleatedFigures(body, skirt);
	const panels = pleatPanels(figures);
	const band = { band: skirt.band, seam: figures.waistSeamGirth, zipAt: skirt.zipAt, allowances: skirt.allowances };
	const pieces = [...pleatPieces(panels, figures, skirt), ...waistbandPieces(band)];
	const drafted: Drafted = { unit: 'mm', body, skirt, figures, pieces, seams: pleatedSeams(panels, figures, pieces, skirt, band) };
	return ok({ ...drafted, checks: pleatedChecks(drafted) });
}
