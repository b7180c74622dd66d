// What the readings say of themselves: two that differ, and numbers that look like a slip. Alike for every style.
import { bodyMeasurements, type Body, type BodyMeasurement } from '../body.ts';
import type { Check } from '../check.ts';
import { askAbout, measurements } from '../measurement.ts';
import { agree, readingTolerance } from '../reading.ts';

function usual(measurement: BodyMeasurement, mm: number | undefined): boolean {
	const [least, most] = measurements[measurement].usual;
	return mm !== undefined && mm >= least && mm <= most;
}

export const readingChecks = (body: Body): readonly Check[] => [...apartChecks(body), ...slipChecks(body)];

function apartChecks({ readings = {} }: Body): readonly Check[] {
	return bodyMeasurements.flatMap((about): readonly Check[] => {
		const { state, pair, spread } = agree((readings[about] ?? []).map((mm) => ({ mm })), readingTolerance);
		if (state !== 'apart') return [];
		return [{ code: 'readings-apart', severity: 'stop', about, figures: { earlier: pair[0], newest: pair[1], spread, tolerance: readingTolerance }, waysOut: [] }];
	});
}

/**
 * What is asked about a reading when it is taken (measurement.ts), asked again of the body as it stands, whatever the unit
 * it was typed in. `figures.guess` is what may have been meant. Two numbers that don't go together are a caution; one that
 * is rare by itself is a note: it may well be so.
 */
function slipChecks(body: Body): readonly Check[] {
	return bodyMeasurements.flatMap((about): readonly Check[] => {
		const mm = body[about];
		if (mm === undefined) return [];
		const earlier = body.readings?.[about]?.slice(0, -1) ?? [];
		// Waist and hip are held against each other once, and only where each could be right by itself.
		const hip = about === 'waist' && usual('waist', mm) && usual('hip', body.hip) ? body.hip : undefined;
		return askAbout(about, mm, { earlier, others: hip === undefined ? {} : { hip } }).flatMap(({ code, figures }): readonly Check[] => {
			if (code === 'unusual' || code === 'waist-over-hip') return [];
			const beside = figures.earlier ?? hip;
			return [{ code, severity: beside === undefined ? 'note' : 'caution', about, figures: { ...figures, ...(beside !== undefined && { beside }) }, waysOut: [] }];
		});
	});
}
