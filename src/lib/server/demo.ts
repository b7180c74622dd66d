// A demo class of our own invention, made through the same doors as a real one.
import { randomUUID } from 'node:crypto';
import type { Sql } from 'postgres';
import type { EventBody, LoggedEvent, Unit } from '../class/event.ts';
import { defaultRules } from '../class/gate.ts';
import type { Now } from '../class/review.ts';
import type { ClassRules } from '../class/rules.ts';
import { foldSkirt } from '../class/skirt-state.ts';
import type { StageList } from '../class/where.ts';
import type { Measurement } from '../drafting/body.ts';
import type { Result } from '../drafting/result.ts';
import type { Asker } from './asker.ts';
import { newJoinCode, openClass } from './class.ts';
import { makeLink } from './link.ts';
import { appendEvents } from './log.ts';
import { admit, askToJoin } from './member.ts';
import { openSkirt } from './opening.ts';
import { makePerson, type Person } from './person.ts';
import { decide, type Verdict } from './review.ts';
import { beginSession, endSession, openSession } from './session.ts';

export interface DemoLink {
	readonly name: string;
	readonly role: 'teacher' | 'learner';
	/** Goes after /link/ in an address; works once, within a week. */
	readonly token: string;
}

/** The lesson the demo class is held on, and how a learner's draft is worked out in it. */
export interface DemoLesson {
	readonly slug: string;
	readonly stages: StageList;
	readonly work: (rules: ClassRules, events: readonly LoggedEvent[]) => Now | null;
}

interface Scene {
	readonly name: string;
	readonly unit: Unit;
	/** As typed, with what each means in mm. */
	readonly readings: readonly (readonly [Measurement, typed: string, mm: number])[];
	/** Ticks every step before this stage, and this many of its own. */
	readonly reached?: readonly [stage: string, steps: number];
	readonly asks?: true;
	readonly verdict?: Verdict;
}

const inches = (eighths: number): number => (eighths / 8) * 25.4;

// Ines asks first, so she waits longest; her waist readings are 18 mm apart.
const scenes: readonly Scene[] = [
	{
		name: 'Ines', unit: 'cm', asks: true, reached: ['mark-cut', 4],
		readings: [['waist', '72,5', 725], ['waist', '74,3', 743], ['hip', '98', 980], ['hip', '98,5', 985], ['waistToHip', '20', 200], ['waistToHip', '20', 200], ['length', '62', 620], ['length', '62', 620]]
	},
	{
		name: 'Tamsin', unit: 'in', asks: true, reached: ['mark-cut', 6],
		readings: [['waist', '28 1/2', inches(228)], ['waist', '28 5/8', inches(229)], ['hip', '39 1/4', inches(314)], ['hip', '39 1/4', inches(314)], ['waistToHip', '8', inches(64)], ['waistToHip', '8 1/8', inches(65)], ['length', '24', inches(192)], ['length', '24', inches(192)]]
	},
	{
		name: 'Noor', unit: 'cm', asks: true, reached: ['back-seam-zip', 5], verdict: { kind: 'clear' },
		readings: [['waist', '68', 680], ['waist', '68,4', 684], ['hip', '94', 940], ['hip', '94', 940], ['waistToHip', '19', 190], ['waistToHip', '19,5', 195], ['length', '58', 580], ['length', '58', 580]]
	},
	{
		name: 'Jory', unit: 'cm', asks: true, reached: ['mark-cut', 2], verdict: { kind: 'return', action: 'Measure from waist to hip once more, down the side.' },
		readings: [['waist', '81', 810], ['waist', '80.5', 805], ['hip', '104', 1040], ['hip', '104,5', 1045], ['waistToHip', '15', 150], ['waistToHip', '15', 150], ['length', '66', 660], ['length', '66', 660]]
	},
	{
		name: 'Oona', unit: 'cm', asks: true, reached: ['hem', 2], verdict: { kind: 'clear' },
		readings: [['waist', '77', 770], ['waist', '77', 770], ['hip', '101', 1010], ['hip', '100,6', 1006], ['waistToHip', '21', 210], ['waistToHip', '21', 210], ['length', '70', 700], ['length', '70', 700]]
	},
	{ name: 'Pia', unit: 'cm', readings: [] }
];

const link = (sql: Sql, person: Person, now: Date): Promise<string> =>
	makeLink(sql, person.id, new Date(now.getTime() + 7 * 24 * 3_600_000));

/** Does something as a person who is signed in, and signs her out after. */
async function as<T>(sql: Sql, person: Person, work: (asker: Asker) => Promise<T>): Promise<T> {
	const id = await beginSession(sql, person);
	const opened = await openSession(sql, id, null);
	try {
		return await work(opened!.asker);
	} finally {
		await endSession(sql, id);
	}
}

/** A refusal here is a mistake of ours. */
function taken<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(`the demo class was refused: ${JSON.stringify(result.issues)}`);
	return result.value;
}

/** Makes the demo class and gives the links to sign in by. */
export async function seedDemo(sql: Sql, now: Date, lesson: DemoLesson): Promise<{ readonly classId: string; readonly links: readonly DemoLink[] }> {
	const teacher = await makePerson(sql, 'Rosalind', true);
	return as(sql, teacher, async (asker) => {
		const day = (after: number): string => new Date(now.getTime() + after * 24 * 3_600_000).toISOString().slice(0, 10);
		const { id: classId, rules } = taken(await openClass(sql, asker, {
			title: 'Thursday evening, village hall', lesson: lesson.slug, firstDay: day(-14), lastDay: day(28), seats: 12, rules: defaultRules
		}, [lesson.slug]));
		const { code } = await newJoinCode(sql, asker, classId, now);
		const links: DemoLink[] = [{ name: teacher.name, role: 'teacher', token: await link(sql, teacher, now) }];
		for (const scene of scenes) {
			const { person, membership: { memberId } } = taken(await askToJoin(sql, null, { code, name: scene.name }));
			await admit(sql, asker, classId, memberId);
			await as(sql, person, (learner) => play(sql, learner, memberId, scene, rules, lesson.stages));
			if (scene.verdict) {
				const { events } = await openSkirt(sql, asker, classId, memberId, 'figures');
				const seen = { classId, memberId, digest: lesson.work(rules, events)?.digest ?? null, decidedAt: foldSkirt(events).decision?.at ?? null };
				taken(await decide(sql, asker, seen, scene.verdict, (events) => lesson.work(rules, events)));
				await as(sql, person, (learner) => tick(sql, learner, memberId, stepsUpTo(lesson.stages, scene.reached), 1000));
			}
			links.push({ name: scene.name, role: 'learner', token: await link(sql, person, now) });
		}
		return { classId, links };
	});
}

/** What a learner says on her own device up to asking: her unit, her readings, the steps before any cutting. */
async function play(sql: Sql, learner: Asker, memberId: string, scene: Scene, rules: ClassRules, stages: StageList): Promise<void> {
	const bodies: EventBody[] = [{ kind: 'preference', unit: scene.unit }];
	for (const [measurement, typed, mm] of scene.readings) {
		bodies.push({ kind: 'reading', measurement, typed, mm, unit: scene.unit, route: 'partner' });
	}
	await say(sql, learner, memberId, bodies, 1);
	if (!scene.verdict || scene.verdict.kind === 'return') await tick(sql, learner, memberId, stepsUpTo(stages, scene.reached), 100);
	if (scene.asks) await say(sql, learner, memberId, [{ kind: 'ask', gate: rules.gate.map(({ id }) => id), second: 'Marit' }], 500);
}

const tick = (sql: Sql, learner: Asker, memberId: string, steps: readonly string[], from: number): Promise<void> =>
	say(sql, learner, memberId, steps.map((step) => ({ kind: 'tick', step })), from);

async function say(sql: Sql, asker: Asker, memberId: string, bodies: readonly EventBody[], from: number): Promise<void> {
	if (bodies.length === 0) return;
	const events = bodies.map((body, index) => ({ id: randomUUID(), device: `demo-${memberId}`, counter: from + index, body }));
	taken(await appendEvents(sql, asker, memberId, events));
}

function stepsUpTo(stages: StageList, reached: Scene['reached']): readonly string[] {
	if (!reached) return [];
	const [stage, steps] = reached;
	const index = stages.findIndex(({ id }) => id === stage);
	if (index === -1) throw new Error(`the lesson has no stage ${stage}`);
	return [...stages.slice(0, index).flatMap((before) => before.steps), ...stages[index]!.steps.slice(0, steps)].map(({ id }) => id);
}

/** The link for whoever teaches here first: she sets her own name and passphrase behind it. */
export async function firstTeacherLink(sql: Sql, now: Date): Promise<string> {
	return link(sql, await makePerson(sql, 'Teacher', true), now);
}
