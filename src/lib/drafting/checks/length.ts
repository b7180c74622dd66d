// The finished length: whether it is one that is worn, and how far the hem stays off the floor. Alike for every style.
import type { Body } from '../body.ts';
import type { Check, WayOut } from '../check.ts';
import { measurements } from '../measurement.ts';
import { slack } from './slack.ts';

/** A hem nearer to the floor than this is trodden on (common practice, no source). mm */
export const floorClearance = 25;

export interface LengthFacts {
	readonly body: Body;
	/** From the band's top edge to the hem fold, where the skirt is longest. */
	readonly length: number;
	/** Where it is shortest; left out where it is of one length. */
	readonly shortestLength?: number;
	/** How far the band's top edge lies above the measured waist line. */
	readonly rise: number;
}

export function lengthChecks({ body, length, shortestLength: least = length, rise }: LengthFacts, open: (ways: readonly WayOut[]) => readonly WayOut[]): readonly Check[] {
	const [shortest, longest] = measurements.length.usual;
	const worn = least >= shortest && length <= longest;
	const checks: Check[] = [{ code: 'length-plausible', severity: worn ? 'good' : 'caution', figures: { length: least < shortest ? least : length, shortest, longest }, waysOut: [] }];
	if (body.waistToFloor === undefined) return checks;
	const clear = body.waistToFloor + rise - length;
	const low = clear < floorClearance - slack;
	const figures = { clear, least: floorClearance, length, waistToFloor: body.waistToFloor };
	const waysOut = low ? open([{ path: 'skirt.length', value: body.waistToFloor + rise - floorClearance }]) : [];
	return [...checks, { code: 'hem-to-floor', severity: low ? 'caution' : 'good', figures, waysOut }];
}
