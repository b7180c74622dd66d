// The figures of an uneven skirt that no formula gives: measured on its outlines.
import type { Figures } from './draft.ts';
import { area, lengthOf } from './geometry/measure.ts';
import type { Layer } from './layer.ts';
import { lining, panelCut } from './panel.ts';
import type { Piece } from './piece.ts';

type Measured = Pick<Figures, 'hemRadius' | 'cutHemRadius' | 'hemSweep' | 'panelAngle' | 'panelCutArea' | 'panelWaistCutLength' | 'panelHemCutLength' | 'liningHemRadius'>;

/**
 * Round the hem the outlines' own lengths are summed. A radius that stands for all of it is that sum over the sweep: the
 * tangent turns by the sweep in all, so that an allowance of t makes the edge θt longer, as on an arc (plane geometry).
 * `drawn` are the layers' pieces, one for each place.
 */
export function measuredFigures(layers: readonly Layer[], drawn: readonly (readonly Piece[])[], { sweepAngle, liningSweepAngle, cutHemRadius, hemRadius }: Figures): Measured {
	const hemOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, { stitch }) => sum + lengthOf(stitch, 'hem'), 0);
	const hemSweep = hemOf(drawn[0]!);
	const radius = hemSweep / sweepAngle;
	const under = layers.findIndex(({ follows }) => follows === lining);
	return {
		hemSweep, hemRadius: radius, cutHemRadius: radius + cutHemRadius - hemRadius, ...mostCloth(layers[0]!, drawn[0]!),
		...(under >= 0 && liningSweepAngle !== undefined && { liningHemRadius: hemOf(drawn[under]!) / liningSweepAngle })
	};
}

/** Of the panel that takes the most cloth, its corners mitred. */
function mostCloth({ size, places }: Layer, pieces: readonly Piece[]): Pick<Figures, 'panelAngle' | 'panelCutArea' | 'panelWaistCutLength' | 'panelHemCutLength'> {
	return pieces.map(({ stitch, cut, hole }, i) => {
		const mitred = size.foldedBack ? (panelCut(stitch, { ...size, foldedBack: false }) ?? cut) : cut;
		return {
			panelAngle: places[i]!.angle, panelCutArea: area(mitred) + (hole ? area(hole.cut) : 0),
			panelWaistCutLength: lengthOf(hole?.cut ?? mitred, 'waist'), panelHemCutLength: lengthOf(mitred, 'hem')
		};
	}).reduce((most, one) => (one.panelCutArea > most.panelCutArea ? one : most));
}
