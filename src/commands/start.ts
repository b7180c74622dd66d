// Builds where needed, opens the database, makes the first people, and lets requests in.
import { readDemoLesson } from '../lib/server/demo-lesson.ts';
import { useDatabase } from '../lib/server/database.ts';
import { linksAtStart } from '../lib/server/first-run.ts';
import { openedHatch } from '../lib/server/hatch.ts';
import { readSettings } from '../lib/server/settings.ts';
import { bodyLimit, openWeb, protocolHeader, type Handler, type Web } from '../lib/server/web.ts';
import { buildIfNeeded } from './build.ts';
import { openPlatform, root, type Opened } from './open.ts';
import { finish } from './outcome.ts';
import { welcome } from './welcome.ts';

await finish(start());

async function start(): Promise<void> {
	const settings = readSettings(process.env, root);
	const web = await openWeb(settings);
	// At the same time, as neither needs the other. Each is waited for, so that nothing is left half-open.
	const [build, opened] = await Promise.allSettled([
		buildIfNeeded(root, () => process.stdout.write('\nBuilding Skirtwright, which takes a moment after a change …\n')),
		openPlatform(settings)
	]);
	if (opened.status === 'rejected') throw opened.reason;
	if (build.status === 'rejected') {
		await opened.value.close();
		throw build.reason;
	}
	const { sql } = opened.value;
	stopWhenTold(web, opened.value);
	useDatabase(sql);
	const [app, links] = await Promise.all([
		loadApp(), linksAtStart(sql, new Date(), settings.demo ? readDemoLesson(`${root}content/lessons`) : null)
	]);
	web.serve(app);
	process.stdout.write(welcome(settings, links));
}

/** The built app. Its settings are ours to give: an origin or a proxy's header from elsewhere would turn people away. */
async function loadApp(): Promise<Handler> {
	for (const name of ['ORIGIN', 'HOST_HEADER', 'PORT_HEADER', 'ADDRESS_HEADER', 'XFF_DEPTH']) delete process.env[name];
	process.env.PROTOCOL_HEADER = protocolHeader;
	process.env.BODY_SIZE_LIMIT = String(bodyLimit);
	const { handler } = (await import(new URL('../../build/handler.js', import.meta.url).href)) as {
		handler: (...args: [...Parameters<Handler>, next: () => void]) => void;
	};
	const hatch = openedHatch();
	return (request, response) => {
		if (!hatch(request, response)) handler(request, response, () => response.writeHead(404).end());
	};
}

function stopWhenTold(web: Web, opened: Opened): void {
	let stopping = false;
	const stop = (): void => {
		stopping = true;
		void web.close().then(opened.close).finally(() => process.exit(0));
	};
	// By Ctrl+C, by another program, or because the window was closed.
	for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
		// Told twice: at once. Nothing acknowledged is lost by that.
		process.on(signal, () => (stopping ? process.exit(1) : stop()));
	}
	// npm tells the shell it runs us in, and not us. That shell lives as long as npm does: it is gone, so we were meant.
	if (process.env.npm_lifecycle_event !== 'start') return;
	const shell = process.ppid;
	setInterval(() => {
		if (process.ppid !== shell && !stopping) stop();
	}, 500).unref();
}
