// The embedded server's data folder: made, set up, started, stopped, and asked whether it runs.
import { execFile } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, rmdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { CannotStart } from './cannot-start.ts';
import { moveInto, placeServerFiles } from './embedded-files.ts';
import { giveToServer, makeHome, makePrivate, makeSocketFolder, serverUser } from './embedded-home.ts';

export interface Cluster {
	readonly home: string;
	/** The server's programs. */
	readonly server: string;
	/** The data proper. */
	readonly data: string;
	readonly password: string;
}

export const user = 'skirtwright';
const hasSockets = process.platform !== 'win32';
const tail = (text: string): string => text.trim().split('\n').slice(-3).join(' ');

/** Runs one of the server's programs as the server's user. */
function run({ home, server }: Pick<Cluster, 'home' | 'server'>, program: string, args: readonly string[]): Promise<{ ok: boolean; output: string }> {
	const options = { cwd: home, env: { ...process.env, LC_ALL: 'C' }, ...serverUser };
	return new Promise((done) => {
		execFile(join(server, 'bin', program), args, options, (problem, stdout, stderr) => {
			done({ ok: problem === null, output: `${stdout}${stderr}` || (problem?.message ?? '') });
		});
	});
}

/** The data in `folder`, made where there is none yet. */
export async function openCluster(folder: string): Promise<Cluster> {
	const home = makeHome(folder);
	const server = placeServerFiles(home);
	const data = join(home, 'cluster');
	if (!existsSync(data)) await makeData(home, server, data);
	const version = readFileSync(join(data, 'PG_VERSION'), 'utf8').trim();
	if (version !== '18') {
		throw new CannotStart(`The records in ${home} were kept by PostgreSQL ${version}, and this Skirtwright brings 18. Start the Skirtwright that made them.`);
	}
	return { home, server, data, password: readFileSync(join(data, 'password'), 'utf8') };
}

async function makeData(home: string, server: string, data: string): Promise<void> {
	// Renamed when it is whole, so that a start broken off, or two at once, leave no half-made records.
	const half = `${data}.${process.pid}`;
	rmSync(half, { recursive: true, force: true });
	makePrivate(half);
	const secret = join(home, `password.${process.pid}`);
	const password = randomBytes(24).toString('base64url');
	writeFileSync(secret, password, { mode: 0o600 });
	giveToServer(secret);
	const { ok, output } = await run({ home, server }, 'initdb', [
		'--pgdata', half, '--username', user, '--auth', 'scram-sha-256', '--pwfile', secret,
		'--encoding', 'UTF8', '--locale', 'C', '--locale-provider', 'builtin', '--builtin-locale', 'C.UTF-8'
	]);
	rmSync(secret);
	if (!ok) {
		rmSync(half, { recursive: true, force: true });
		throw new CannotStart(`The database couldn’t be made in ${home}: ${tail(output)}`);
	}
	writeFileSync(join(half, 'password'), password, { mode: 0o600 });
	moveInto(half, data);
}

/** What `postmaster.pid` says: one line each for process, folder, start, port, socket's folder, address, memory, state. */
export function readRunning({ data, password }: Cluster): { readonly alive: boolean; readonly ready: boolean; url: (database: string) => string } | null {
	const file = join(data, 'postmaster.pid');
	if (!existsSync(file)) return null;
	const [pid = '', , , port, folder = '', , , state = ''] = readFileSync(file, 'utf8').split('\n');
	const where = folder ? `localhost:${port}` : `127.0.0.1:${port}`;
	return {
		alive: isAlive(Number(pid)),
		ready: state.trim() === 'ready',
		url: (database) => `postgres://${user}:${password}@${where}/${database}${folder ? `?host=${encodeURIComponent(folder)}` : ''}`
	};
}

function isAlive(pid: number): boolean {
	try {
		return pid > 0 && process.kill(pid, 0);
	} catch (problem) {
		return (problem as NodeJS.ErrnoException).code === 'EPERM';
	}
}

/** Starts the server; null when it runs, else what it said. Just after a crash it may need another try. */
export async function startCluster(cluster: Cluster): Promise<string | null> {
	const quote = (text: string): string => `'${text.replaceAll("'", "''")}'`;
	writeFileSync(join(cluster.data, 'postgresql.conf'), [
		'# Written at every start. Settings of your own go in with ALTER SYSTEM.',
		`listen_addresses = ${quote(hasSockets ? '' : '127.0.0.1')}`,
		`port = ${hasSockets ? 5432 : await freePort()}`,
		`unix_socket_directories = ${quote(hasSockets ? makeSocketFolder(cluster.home) : '')}`,
		'unix_socket_permissions = 0700',
		'fsync = on', 'full_page_writes = on', 'synchronous_commit = on',
		"timezone = 'UTC'", "log_timezone = 'UTC'",
		// The log must not repeat what people typed.
		'log_error_verbosity = terse', 'log_min_error_statement = panic', 'log_checkpoints = off', ''
	].join('\n'));
	const log = join(cluster.home, 'cluster', 'server.log');
	if (existsSync(log) && statSync(log).size > 1_000_000) rmSync(log);
	const { ok, output } = await run(cluster, 'pg_ctl', ['start', '--pgdata', cluster.data, '--log', log, '--wait', '--timeout', '60', '--silent']);
	if (ok) return null;
	return tail(existsSync(log) ? readFileSync(log, 'utf8') : output);
}

export async function stopCluster(cluster: Cluster): Promise<void> {
	await run(cluster, 'pg_ctl', ['stop', '--pgdata', cluster.data, '--mode', 'fast', '--wait', '--timeout', '60', '--silent']);
	try {
		if (hasSockets) rmdirSync(makeSocketFolder(cluster.home));
	} catch {
		// Someone has just started it again, and the folder is in use.
	}
}

function freePort(): Promise<number> {
	return new Promise((done, refuse) => {
		const probe = createServer().on('error', refuse).listen(0, '127.0.0.1', () => {
			const address = probe.address();
			probe.close(() => done(typeof address === 'object' && address ? address.port : 0));
		});
	});
}
