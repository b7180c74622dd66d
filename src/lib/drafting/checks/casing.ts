// Whether a casing takes its elastic: alike for every style.
import { casingRoom } from '../band/elastic.ts';
import type { Check, WayOut } from '../check.ts';
import { slack } from './slack.ts';

/** The narrowest elastic that is offered as a way out (common practice, no source). mm */
const narrowest = 3;

export function casingCheck({ depth, elastic }: { readonly depth: number; readonly elastic: number }, open: (ways: readonly WayOut[]) => readonly WayOut[]): Check {
	const least = elastic + casingRoom;
	const tight = depth < least - slack;
	const narrower = depth - casingRoom;
	const ways: WayOut[] = tight ? [{ path: 'skirt.band.depth', value: least }, ...(narrower >= narrowest ? [{ path: 'skirt.band.elastic', value: narrower }] : [])] : [];
	return { code: 'casing-depth', severity: tight ? 'stop' : 'good', figures: { depth, elastic, least }, waysOut: open(ways) };
}
