// A draft made by hand for drawings: the sector's geometry without the engine's checks.
import type { Draft, Figures } from '../../src/lib/drafting/draft.ts';
import type { Edge, Outline } from '../../src/lib/drafting/geometry/outline.ts';
import { polar, type Point } from '../../src/lib/drafting/geometry/point.ts';
import type { Piece } from '../../src/lib/drafting/piece.ts';

interface Sample { share?: number; panels?: number; waist?: number; length?: number; hem?: number; zip?: number; seam?: number }

/** Outline of a sector with straight edges moved aside by `s`. */
function ring(r: number, R: number, half: number, s: number): Outline {
	const at = (q: number, side: 1 | -1): Point => polar([0, 0], q, side * (half + Math.asin(s / q)));
	const turn = (q: number): number => 2 * (half + Math.asin(s / q));
	const edge = (name: string, end: Point, t = 0): Edge => ({ name, end, centre: t ? [0, 0] : null, turn: t });
	return {
		start: at(R, -1),
		edges: [edge('hem', at(R, 1), turn(R)), edge('seam left', at(r, 1)), edge('waist', at(r, -1), -turn(r)), edge('seam right', at(R, -1))]
	};
}

export function sampleDraft({ share = 0.5, panels = 1, waist = 740, length = 620, hem = 20, zip = 160, seam = 20 }: Sample = {}): Draft {
	const [allowance, depth] = [15, 40];
	const sweepAngle = 2 * Math.PI * share;
	const r = waist / sweepAngle;
	const L = length - depth;
	const R = r + L;
	const half = sweepAngle / panels / 2;
	const figures: Figures = {
		sweepAngle, waistSeamGirth: waist, waistRadius: r, cutWaistRadius: r - allowance, skirtLength: L, hemRadius: R, cutHemRadius: R + hem,
		hemSweep: sweepAngle * R, hemSurplus: 2 * sweepAngle * hem, bandCutLength: waist + 30 + 2 * seam, bandCutDepth: 2 * depth + 2 * allowance,
		openingBelowSeam: zip - 5, zipLength: zip, zipEndBelowSeam: zip, panelAngle: 2 * half, panelCutArea: 0, panelWaistCutLength: 0, panelHemCutLength: 0,
		waistClip: sweepAngle * allowance, liningHemRadius: R - 20, liningOpeningBelowSeam: zip + 15
	};
	const piece: Piece = {
		name: 'panel', cloth: 'shell', count: panels,
		fold: panels === 1 ? { name: 'centre front', from: [r - allowance, 0], to: [R + hem, 0] } : null,
		grain: panels === 1 ? { from: [r + 200, 100], to: [r + 200, 300] } : { from: [r + 100, 0], to: [R - 100, 0] },
		stitch: ring(r, R, half, 0), cut: ring(r - allowance, R + hem, half, seam),
		notches: [{ edge: 'seam left', at: zip / L, kind: 'single', marks: 'zip end' }]
	};
	return {
		unit: 'mm', body: { waist: waist - 20, hip: waist + 250, waistToHip: 200 }, figures, pieces: [piece], seams: [], checks: [],
		skirt: {
			style: 'flared', share, length, waistEase: 20, hipEase: 40, panels, band: { kind: 'straight', depth, underlap: 30 }, hem, hemFinish: 'narrow',
			zipAt: 'centreBack', zipSeries: 'cm', lining: { shorterBy: 25 }, allowances: { waist: allowance, seam }
		}
	};
}
