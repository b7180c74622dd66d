// A PostgreSQL of our own that starts with the app. Processes on one folder share it; the last to leave stops it.
import { setTimeout as wait } from 'node:timers/promises';
import type { Sql } from 'postgres';
import { CannotStart } from './cannot-start.ts';
import { openDatabase } from './connection.ts';
import { openCluster, readRunning, startCluster, stopCluster, user, type Cluster } from './embedded-cluster.ts';

export interface Embedded {
	readonly url: string;
	/** Close every pool on `url` first. */
	leave(): Promise<void>;
}

/** Whoever uses the server holds this lock, shared, on a connection kept for that; a killed process lets go of it by itself. */
const inUse = 4_711_150_802;
/** The app's database in the cluster. */
const name = user;
/** Children of a killed server hold its memory for a moment, and it can't start before they are gone: 1 to 3 s were seen. */
const failingFor = 10_000;
/** Coming back from a crash takes as long as there is work to do again. */
const startingFor = 120_000;

/** Starts the server on `folder`, or joins the one that runs there. If it stops on its own it is started again. */
export async function startEmbedded(folder: string): Promise<Embedded> {
	let left = false;
	let hold = await join(await openCluster(folder), comeBack);

	function comeBack(): void {
		if (left) return;
		void hold.sql.end({ timeout: 0 });
		const again = (): void => {
			openCluster(folder).then((cluster) => join(cluster, comeBack)).then(
				(found) => {
					hold = found;
					if (left) void leaveHold(hold);
				},
				(problem: Error) => {
					process.stderr.write(`${problem.message}\n`);
					setTimeout(again, 5000).unref();
				}
			);
		};
		again();
	}

	return {
		url: hold.url,
		leave() {
			left = true;
			return leaveHold(hold);
		}
	};
}

interface Hold {
	readonly cluster: Cluster;
	readonly url: string;
	readonly sql: Sql;
}

async function leaveHold({ sql, cluster }: Hold): Promise<void> {
	// A shared lock of one's own doesn't stand in the way: this is true when nobody else has one.
	const rows = await sql`select pg_try_advisory_lock(${inUse}) as last`.catch(() => []);
	if (rows[0]?.last) await stopCluster(cluster);
	await sql.end({ timeout: 0 });
}

async function join(cluster: Cluster, onLost: () => void): Promise<Hold> {
	const began = Date.now();
	let failingSince: number | null = null;
	for (;;) {
		const running = readRunning(cluster);
		if (running?.alive && running.ready) {
			const sql = await takeHold(running.url('postgres'), onLost).catch(() => null);
			if (sql) return { cluster, url: running.url(name), sql };
		} else if (!running?.alive) {
			const says = await startCluster(cluster);
			if (says === null) continue;
			failingSince ??= Date.now();
			if (Date.now() - failingSince > failingFor) {
				throw new CannotStart(`The database in ${cluster.home} doesn’t start. It says: ${says}`);
			}
		}
		if (Date.now() - began > startingFor) {
			throw new CannotStart(`The database in ${cluster.home} doesn’t answer. If no other Skirtwright runs on that folder, remove ${cluster.data}/postmaster.pid and start again.`);
		}
		await wait(100);
	}
}

/** Waits while the last one to leave is stopping the server, and fails when it has. */
async function takeHold(url: string, onLost: () => void): Promise<Sql> {
	let held = false;
	const sql = openDatabase(url, {
		max: 1,
		// The driver would close it after half an hour or so, and let go of the lock.
		max_lifetime: null,
		onclose() {
			if (held) onLost();
			held = false;
		}
	});
	try {
		await sql`select pg_advisory_lock_shared(${inUse})`;
		const [there] = await sql`select from pg_database where datname = ${name}`;
		// Two at once: the second is told that it is there.
		if (!there) await sql`create database ${sql(name)}`.catch(() => sql`select from pg_database where datname = ${name}`);
		held = true;
		return sql;
	} catch (problem) {
		await sql.end({ timeout: 0 });
		throw problem;
	}
}
