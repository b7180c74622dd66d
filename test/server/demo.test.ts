import { expect, test } from 'vitest';
import type { LoggedEvent } from '../../src/lib/class/event.ts';
import { defaultRules } from '../../src/lib/class/gate.ts';
import { queue, reviewState, type Now } from '../../src/lib/class/review.ts';
import { foldSkirt } from '../../src/lib/class/skirt-state.ts';
import { whereIs, type StageList } from '../../src/lib/class/where.ts';
import { classesOf } from '../../src/lib/server/class.ts';
import { seedDemo } from '../../src/lib/server/demo.ts';
import { readDemoLesson } from '../../src/lib/server/demo-lesson.ts';
import { digest } from '../../src/lib/server/digest.ts';
import { takeLink } from '../../src/lib/server/link.ts';
import { readClassLogs, readEvents } from '../../src/lib/server/log.ts';
import { readOpenings } from '../../src/lib/server/opening.ts';
import { signIn } from './scene.ts';
import { onEachServer } from './test-database.ts';

// The main lesson's stages with six steps each: the demo knows stages, and takes the steps from the lesson.
const stages: StageList = ['prepare', 'mark-cut', 'staystitch', 'back-seam-zip', 'lining', 'try-on', 'waistband', 'hang-level', 'hem', 'finish'].map((id) => ({
	id, title: id, steps: Array.from({ length: 6 }, (_, index) => ({ id: `${id}-${index}`, title: `${index}` }))
}));
function work(_: unknown, events: readonly LoggedEvent[]): Now | null {
	const { readings } = foldSkirt(events);
	return readings.waist ? { digest: digest(readings), engine: '1', figures: { waist: readings.waist.at(-1)!.mm * 10 }, rules: {} } : null;
}

onEachServer('the demo class', (database) => {
	test('on the main lesson itself, the readings that are apart leave nothing to clear, and the cleared figures are drafted ones', async () => {
		const sql = database();
		const lesson = readDemoLesson(new URL('../../content/lessons', import.meta.url).pathname);
		expect(lesson.stages.map(({ id }) => id)).toEqual(stages.map(({ id }) => id));
		const { classId, links } = await seedDemo(sql, new Date(), lesson);
		const { asker } = await signIn(sql, (await takeLink(sql, links[0]!.token))!);
		const logs = await readClassLogs(sql, asker, classId);
		const of = (name: string) => logs.find((log) => log.name === name)!.events;
		const review = (name: string) => reviewState(foldSkirt(of(name)), lesson.work(defaultRules, of(name)));
		expect(lesson.work(defaultRules, of('Ines'))).toBeNull();
		expect(lesson.work(defaultRules, of('Tamsin'))).not.toBeNull();
		expect(['Ines', 'Tamsin', 'Noor', 'Jory', 'Oona', 'Pia'].map(review)).toEqual(['asked', 'asked', 'cleared', 'returned', 'cleared', 'not-asked']);
		// Noor's waist is 68.0 and 68.4, so 68.2 cm with the lesson's 1 cm of ease: a half circle's radius is 692 ÷ π = 220.3 mm.
		expect(foldSkirt(of('Noor')).cleared?.figures).toMatchObject({ waistSeamGirth: 6920, waistRadius: 2203 });
	});

	test('its people sign in by links that work once, and stand at different places', async () => {
		const sql = database();
		const { classId, links } = await seedDemo(sql, new Date(), { slug: 'lined-half-circle', stages, work });
		expect(links.map(({ name, role }) => `${name}, ${role}`)).toEqual([
			'Rosalind, teacher', 'Ines, learner', 'Tamsin, learner', 'Noor, learner', 'Jory, learner', 'Oona, learner', 'Pia, learner'
		]);
		const people = new Map<string, Awaited<ReturnType<typeof signIn>>['asker']>();
		for (const { name, token } of links) {
			people.set(name, (await signIn(sql, (await takeLink(sql, token))!)).asker);
			expect(await takeLink(sql, token)).toBeNull();
		}
		const logs = await readClassLogs(sql, people.get('Rosalind')!, classId);
		const standing = logs.map(({ memberId, name, events }) => {
			const state = foldSkirt(events);
			const review = reviewState(state, work(null, events));
			return { memberId, name, review, flags: [], since: state.decision?.at ?? null, changed: state.changedSince, unit: state.unit, where: whereIs(stages, state).next?.step };
		});
		expect(standing.map(({ name, review, unit, where }) => [name, review, unit, where])).toEqual([
			['Ines', 'asked', 'cm', 'mark-cut-4'],
			['Tamsin', 'asked', 'in', 'staystitch-0'],
			['Noor', 'cleared', 'cm', 'back-seam-zip-5'],
			['Jory', 'returned', 'cm', 'mark-cut-2'],
			['Oona', 'cleared', 'cm', 'hem-2'],
			['Pia', 'not-asked', 'cm', 'prepare-0']
		]);
		expect(queue(standing).slice(0, 2).map(({ name }) => name)).toEqual(['Ines', 'Tamsin']);
	});

	test('each learner reads her own log, and sees that her teacher opened it before deciding', async () => {
		const sql = database();
		const { links } = await seedDemo(sql, new Date(), { slug: 'lined-half-circle', stages, work });
		const { asker } = await signIn(sql, (await takeLink(sql, links.find(({ name }) => name === 'Noor')!.token))!);
		const [{ membership }] = await classesOf(sql, asker) as [Awaited<ReturnType<typeof classesOf>>[number]];
		expect((await readEvents(sql, asker, membership.memberId)).filter(({ body }) => body.kind === 'reading')).toHaveLength(8);
		expect((await readOpenings(sql, asker, membership.memberId)).map(({ by, what }) => `${by}: ${what}`)).toEqual(['Rosalind: figures']);
		// Nobody is left signed in from the making of it.
		const [{ sessions }] = await sql`select count(*)::int as sessions from sessions where person_id = ${asker.person.id}` as never as [{ sessions: number }];
		expect(sessions).toBe(1);
	});
});
