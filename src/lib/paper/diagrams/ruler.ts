// A stretch of ruler round one length, its mark where a person with a ruler finds it: the nearest millimetre or eighth.
import type { Drawing } from '../drawing.ts';
import { num, type Unit } from './number.ts';
import { linePath } from './shape.ts';

const REACH = { cm: 30, in: 38.1 } as const;

/** `mm` on a ruler in `unit`: 3 cm or 1½ in to either side. */
export function rulerDrawing(mm: number, unit: Unit): Drawing {
	const step = unit === 'cm' ? 1 : 25.4 / 8;
	const at = Math.round(mm / step) * step;
	const from = Math.max(0, at - REACH[unit]);
	const to = from + 2 * REACH[unit];
	return {
		alt: `${num(at, unit)} ${unit} on a ruler, to the nearest ${unit === 'cm' ? 'millimetre' : 'eighth of an inch'}.`,
		box: { from: [0, 0], to: [to - from, 0] }, inkMargin: [12, 12, 52, 12],
		shapes: [
			{ shape: 'ruler', along: linePath([0, 0], [to - from, 0]), starts: from, unit, body: 'tape', marks: [{ at, text: num(at, unit), voice: 'labelStrong' }] }
		]
	};
}
