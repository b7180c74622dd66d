// Ways out that lead somewhere.
import type { Body } from './body.ts';
import type { WayOut } from './check.ts';
import { obstacles } from './cuttable.ts';
import type { Skirt } from './skirt.ts';
import { takeWayOut } from './take.ts';

/** Only the ways out that leave a skirt that can be cut. */
export const openWays = (body: Body, skirt: Skirt, ways: readonly WayOut[]): readonly WayOut[] =>
	ways.filter((way) => obstacles(body, takeWayOut(skirt, way)).length === 0);
