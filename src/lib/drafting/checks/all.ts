// Everything the draft tells back, in the order it is read: what stops first is decided by severity, not here.
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { seamBelowWaist } from '../figures.ts';
import { finishedRange } from '../profile.ts';
import type { Skirt } from '../skirt.ts';
import { openWays } from '../way-out.ts';
import { bandChecks } from './band.ts';
import { clothChecks } from './cloth.ts';
import { hemChecks } from './hem.ts';
import { hipChecks } from './hip.ts';
import { lengthChecks } from './length.ts';
import { lengthsChecks } from './lengths.ts';
import { shorterWays } from './length-ways.ts';
import { liningChecks } from './lining.ts';
import { openingChecks } from './opening.ts';
import { readingChecks } from './readings.ts';
import { strideChecks } from './stride.ts';
import { waistChecks } from './waist.ts';
import { walkChecks } from './walk.ts';

/** `chosen` is what was asked for, where the draft had to choose otherwise. */
export const checksOf = (drafted: Drafted, chosen: Skirt): readonly Check[] => [
	...walkChecks(drafted.seams, { underlap: drafted.skirt.band.underlap, cutLength: drafted.figures.bandCutLength }),
	...readingChecks(drafted.body),
	...hipChecks(drafted),
	...openingChecks(drafted, chosen),
	...bandChecks(drafted),
	...waistChecks(drafted),
	...strideChecks(drafted),
	...hemChecks(drafted),
	...liningChecks(drafted),
	...lengthsChecks(drafted),
	...lengthChecks(
		{ body: drafted.body, ...finishedRange(drafted.skirt), rise: drafted.skirt.band.depth - seamBelowWaist(drafted.skirt.band) },
		(ways) => openWays(drafted.body, drafted.skirt, shorterWays(drafted.skirt, ways))
	),
	...clothChecks(drafted.skirt)
];
