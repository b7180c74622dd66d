// What comes of a question: a layout, how good it is, and what is proved about it.
import type { Placement } from './cloth.ts';
import type { Problem } from './problem.ts';
import type { Found } from './prover.ts';

export interface Answer {
	/** Null while neither a layout nor its impossibility is known. */
	readonly fits: boolean | null;
	/** That the layout takes, mm; null without one. */
	readonly length: number | null;
	/** What was to be greatest, mm: the outer radius, or a skirt’s length (`family.ts`); null where that wasn’t asked. */
	readonly outer: number | null;
	/** No layout is shorter than this; or the unknown can’t be greater. Millimetres. */
	readonly bound: number;
	/** The bound is within 1 mm of what was found, or nothing fits and that is certain. */
	readonly proved: boolean;
	/** By how many percent of the least possible the layout may be longer than it; of the outer radius, how many percent short. */
	readonly above: number | null;
	readonly placements: readonly Placement[];
	/** The clock, not the count of work, ended it: another run may give another answer. */
	readonly cutShort: boolean;
}

/** mm within which a layout counts as proved. */
export const within = 1;

export function placementsOf({ lies, kinds }: Problem, { cast, places }: Found): readonly Placement[] {
	const placements: Placement[] = [];
	let k = 0;
	for (const { copies } of kinds) {
		for (let next = 0; next < copies.length; k++) {
			const lie = lies[cast[k]!]!;
			const at = { turn: lie.turn, x: places.x[k]!, y: places.y[k]! + lie.lift };
			const lay = (on: Placement['on']): void => {
				const copy = copies[next++];
				if (copy) placements.push({ ...copy, ...at, ...(on && { on }) });
			};
			if (lie.on === 'open') lay(undefined);
			else if (lie.on === 'fold') lay('fold');
			else {
				lay('upper');
				lay('lower');
			}
		}
	}
	return placements;
}

/** For the command: cm and degrees, to a tenth of a micrometre, which no layout's check can tell from none. */
export function printAnswer(answer: Answer, seconds: number): Readonly<Record<string, unknown>> {
	const cm = (mm: number | null): number | null => (mm === null ? null : Math.round(mm * 1e4) / 1e5 + 0);
	return {
		fits: answer.fits, length: cm(answer.length), outer: cm(answer.outer), bound: cm(answer.bound), proved: answer.proved,
		above: answer.above === null ? null : Math.round(answer.above * 1000) / 1000, seconds: Math.round(seconds * 1000) / 1000, cutShort: answer.cutShort,
		placements: answer.placements.map(({ turn, x, y, ...rest }) => ({ ...rest, turn: Math.round((turn * 180e9) / Math.PI) / 1e9 + 0, x: cm(x), y: cm(y) }))
	};
}
