// Ticks a second from request to commit, on the built app and on a bare server with the same statements, by turns in one run.
import { randomUUID } from 'node:crypto';
import { connect } from 'node:net';
import { join } from 'node:path';
import { readDemoLesson } from '../../src/lib/server/demo-lesson.ts';
import { freePort, root, runScript, withBuiltApp } from './app/built-app.ts';
import type { Row } from './row.ts';

const CONNECTIONS = 8;
/** ms. Many short rounds by turns, all counted: other work on the machine slows both alike. The best rounds of each needn't have had the same machine. */
const ROUND = 500;
const ROUNDS = 16;

interface Target {
	readonly port: number;
	readonly path: string;
	readonly session: string;
}
const steps = readDemoLesson(join(root, 'content/lessons')).stages.flatMap(({ steps }) => steps.map(({ id }) => id));
let counter = 0;
function tick({ port, path, session }: Target): string {
	counter++;
	const body = JSON.stringify({ events: [{ id: randomUUID(), device: 'bench', counter, body: { kind: counter % 2 ? 'tick' : 'untick', step: steps[counter % steps.length] } }] });
	return `POST ${path} HTTP/1.1\r\nhost: localhost:${port}\r\norigin: http://localhost:${port}\r\ncookie: skirtwright=${session}\r\naccept-encoding: gzip, deflate, br\r\ncontent-type: application/json\r\ncontent-length: ${body.length}\r\n\r\n${body}`;
}

/** One connection kept alive, a tick after the other until `until`; gives how many were kept. A bare socket, so that the asking costs little. */
function ask(target: Target, until: number): Promise<number> {
	return new Promise((done, failed) => {
		let kept = 0;
		let said = '';
		const socket = connect(target.port, 'localhost', () => socket.write(tick(target)));
		socket.setNoDelay(true);
		socket.on('error', failed);
		socket.on('data', (part: Buffer) => {
			said += part.toString('latin1');
			const head = said.indexOf('\r\n\r\n');
			if (head < 0) return;
			const length = /content-length: (\d+)/i.exec(said)?.[1];
			if (length === undefined || !said.startsWith('HTTP/1.1 200')) return failed(new Error(`no tick was kept: ${said.slice(0, 400)}`));
			if (said.length < head + 4 + Number(length)) return;
			if (!/"kept":\["[0-9a-f-]{36}"\]/.test(said)) return failed(new Error(`no tick was kept: ${said.slice(head)}`));
			kept++;
			said = '';
			if (performance.now() < until) socket.write(tick(target));
			else socket.end(() => done(kept));
		});
	});
}

async function perSecond(target: Target, ms: number): Promise<number> {
	const start = performance.now();
	const kept = await Promise.all(Array.from({ length: CONNECTIONS }, () => ask(target, start + ms)));
	return kept.reduce((sum, one) => sum + one, 0) / ((performance.now() - start) / 1000);
}

export default (): Promise<readonly Row[]> => withBuiltApp(async ({ port, databaseUrl, learner: { session, memberId, classId } }) => {
	const barePort = await freePort();
	const bare = await runScript('test/bench/app/bare-server.ts', { PORT: String(barePort), BARE_DATABASE: databaseUrl, BARE_CLASS: classId, BARE_MEMBER: memberId }, 'listening');
	try {
		const targets = { app: { port, path: `/skirt/${classId}/log`, session }, bare: { port: barePort, path: '/', session } };
		// No tick comes before a page was opened; from the first one on the app keeps track of what each promise belongs to, which costs.
		await (await fetch(`http://localhost:${port}/lessons`)).text();
		const found = { app: 0, bare: 0 };
		// Once each to warm up; then by turns.
		for (const name of ['bare', 'app'] as const) await perSecond(targets[name], ROUND);
		for (let round = 0; round < ROUNDS; round++) for (const name of ['bare', 'app'] as const) found[name] += (await perSecond(targets[name], ROUND)) / ROUNDS;
		const { app, bare: least } = found;
		return [
			{ what: 'ticks on a bare server, same statements', figure: least, unit: 'a second', goal: '–' },
			{ what: 'ticks on the built app', figure: app, unit: 'a second', goal: '–' },
			{ what: 'ticks on the built app', figure: app / least, unit: '', goal: '≥ 0.6', ratioOf: 'the bare server' }
		];
	} finally {
		await bare.stop();
	}
});
