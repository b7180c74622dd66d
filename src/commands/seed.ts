// npm run seed: the first teacher and the demo class where nobody is yet, and a fresh link for each who signs in by one.
import { readDemoLesson } from '../lib/server/demo-lesson.ts';
import { linksAtStart } from '../lib/server/first-run.ts';
import { readSettings } from '../lib/server/settings.ts';
import { openPlatform, root } from './open.ts';
import { finish } from './outcome.ts';

await finish(seed());

async function seed(): Promise<void> {
	const { sql, close } = await openPlatform(readSettings(process.env, root));
	try {
		const links = await linksAtStart(sql, new Date(), readDemoLesson(`${root}content/lessons`));
		for (const { name, role, token } of links) process.stdout.write(`${name} (${role === 'learner' ? 'learner' : 'teacher'}): /link/${token}\n`);
	} finally {
		await close();
	}
}
