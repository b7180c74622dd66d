// What the hem has to ease in, for the finish chosen.
import type { Check, WayOut } from '../check.ts';
import type { Drafted } from '../draft.ts';
import type { HemFinish } from '../skirt.ts';
import { openWays } from '../way-out.ts';
import { slack } from './slack.ts';

/** Ease from 4 %, another finish from 12 % (common practice, no source). */
const easesFrom = 0.04;
const anotherFrom = 0.12;
/** The shallowest that can be turned, mm (common practice, no source). */
export const shallowest: Readonly<Record<HemFinish, number>> = { turned: 10, narrow: 6, rolled: 4, bound: 0, faced: 0 };

/**
 * Turned once by t: θ(R + t) lies on θ(R − t). Turned twice by t/2, or rolled: θ(R + t/2) lies on θ(R − t/2). A hem that is
 * bound or faced turns nothing up. Circle geometry.
 */
export function hemSurplus(finish: HemFinish, radius: number, sweep: number, hem: number): { readonly surplus: number; readonly fraction: number } {
	if (finish === 'bound' || finish === 'faced') return { surplus: 0, fraction: 0 };
	const turn = finish === 'turned' ? hem : hem / 2;
	return { surplus: 2 * sweep * turn, fraction: turn < radius ? (2 * turn) / (radius - turn) : Infinity };
}

/** The deepest hem whose surplus stays at `fraction`: 2t = f(R − t), rounded down to half a millimetre. */
function deepestHem(finish: HemFinish, radius: number, fraction: number): number {
	const turn = (fraction * radius) / (2 + fraction);
	return Math.floor((finish === 'turned' ? turn : 2 * turn) * 2 - 1e-6) / 2;
}

export function hemChecks({ body, skirt, figures }: Drafted): readonly Check[] {
	const { hemRadius, sweepAngle } = figures;
	const of = (finish: HemFinish) => hemSurplus(finish, hemRadius, sweepAngle, skirt.hem);
	const { surplus, fraction } = of(skirt.hemFinish);
	const severity = fraction < easesFrom ? 'good' : fraction < anotherFrom ? 'note' : 'caution';
	const ways: WayOut[] = [];
	if (severity !== 'good') {
		if (skirt.hemFinish === 'turned' && of('narrow').fraction < easesFrom) {
			ways.push({ path: 'skirt.hemFinish', value: 'narrow', figures: { surplus: of('narrow').surplus, fraction: of('narrow').fraction } });
		}
		const deepest = deepestHem(skirt.hemFinish, hemRadius, easesFrom - slack);
		if (deepest >= shallowest[skirt.hemFinish]) ways.push({ path: 'skirt.hem', value: deepest });
	}
	return [{
		code: 'hem-surplus', severity, about: skirt.hemFinish,
		figures: { surplus, fraction, hem: skirt.hem, hemSweep: figures.hemSweep }, waysOut: openWays(body, skirt, ways)
	}];
}
