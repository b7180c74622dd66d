// How long layouts take to be found and proved, in Node. Figures to read, never a test.
import { layOut } from '../../src/lib/cloth/lay-out.ts';
import type { Answer } from '../../src/lib/cloth/answer.ts';
import { question, quarters, rectangle, sector, straight } from '../cloth/cases.ts';
import type { Row } from './row.ts';

interface Timed {
	readonly answer: Answer;
	readonly seconds: number;
	/** When the last layout came, seconds. */
	readonly laid: number;
}

function timed(asked: object): Timed {
	const start = performance.now();
	const gone = (): number => (performance.now() - start) / 1000;
	const steps = layOut(question(asked), () => performance.now());
	let [laid, length, outer] = [0, null as number | null, null as number | null];
	for (;;) {
		const { done, value } = steps.next();
		if (value.length !== length || value.outer !== outer) [laid, length, outer] = [gone(), value.length, value.outer];
		if (done) return { answer: value, seconds: gone(), laid };
	}
}

const gore = (count: number) => ({ name: 'gore', count, gore: { top: 14, bottom: 34, length: 72 }, turns: straight });
const tiers = [rectangle('first', 2, 100, 22, [0, 90]), rectangle('second', 3, 120, 24, [0, 90]), rectangle('third', 4, 130, 26, [0, 90])];
const worn = { width: 135, length: 200, unusable: [{ x: 80, y: 52.5, length: 40, width: 30 }] };

const few = [
	['two quarters', { cloth: { width: 140 }, pieces: [sector('panel', 2, [12, 75, 90], straight)] }],
	['four quarters', { cloth: { width: 115 }, pieces: [sector('panel', 4, [10, 68, 90], straight)] }],
	['panels, band, facings', { cloth: { width: 140 }, pieces: [sector('panel', 2, [12, 75, 90], straight), rectangle('band', 1, 80, 8, quarters), sector('facing', 2, [12, 18, 90], straight)] }],
	['five panels, quarter turns', { cloth: { width: 140 }, pieces: [sector('panel', 5, [12, 65, 72], quarters)] }]
] as const;
/** With the shortest length that is known, cm. */
const more = [
	['six gores one way', 144, { cloth: { width: 140 }, nap: true, pieces: [gore(6)] }],
	['nine tiers', 216, { cloth: { width: 140 }, pieces: tiers }],
	['eight narrow panels', 202.08, { cloth: { width: 150 }, pieces: [sector('panel', 8, [10, 80, 45], straight)] }],
	['twelve narrow panels', 250.72, { cloth: { width: 150 }, pieces: [sector('panel', 12, [12, 95, 30], straight)] }]
] as const;
const found = [
	['two quarters round a worn place', { cloth: worn, pieces: [sector('panel', 2, [12, 75, 90], quarters, true)] }],
	['four quarters and a band', { cloth: { width: 240, length: 260 }, pieces: [sector('panel', 4, [11, 75, 90], quarters, true), rectangle('band', 1, 78, 8, quarters)] }]
] as const;

export default function benchCloth(): readonly Row[] {
	timed(few[0][1]);
	return [
		...few.map(([what, asked]): Row => {
			const { answer, seconds } = timed({ ...asked, seconds: 5 });
			return { what: `layout: ${what}, ${answer.proved ? 'proved' : 'NOT proved'} to 1 mm`, figure: seconds, unit: 's', goal: '0.5 or less' };
		}),
		...more.flatMap(([what, known, asked]): readonly Row[] => {
			const { answer, seconds, laid } = timed({ ...asked, seconds: 10 });
			return [
				{ what: `layout: ${what}, last layout`, figure: laid, unit: 's', goal: '2 or less; 10 to 12 pieces 5' },
				{ what: `layout: ${what}, longer than the best known`, figure: (answer.length! / 10 / known - 1) * 100, unit: '%', goal: '0.5 or less; 10 to 12 pieces 1' },
				{ what: `layout: ${what}, above the proved bound (${answer.proved ? 'proved' : 'open'}) after ${seconds.toFixed(1)} s`, figure: answer.above!, unit: '%', goal: 'said' }
			];
		}),
		...found.map(([what, asked]): Row => {
			const { answer, seconds } = timed({ ...asked, find: 'outer', seconds: 5 });
			return { what: `longest skirt: ${what}, ${answer.proved ? 'proved' : 'NOT proved'} to 1 mm`, figure: seconds, unit: 's', goal: '2 or less' };
		})
	];
}
