// Where the embedded server lives: its data, its own files, its socket, and which user runs it.
import { createHash } from 'node:crypto';
import { chmodSync, chownSync, existsSync, lstatSync, mkdirSync, realpathSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { CannotStart } from './cannot-start.ts';

/** PostgreSQL refuses to run as root. This is the user that owns nothing else ("nobody" on most systems). */
const nobody = 65_534;
const isRoot = process.getuid?.() === 0;

/** Whom the server runs as, in the form that `spawn` takes; nothing where it is the user who starts the app. */
export const serverUser: { readonly uid?: number; readonly gid?: number } = isRoot ? { uid: nobody, gid: nobody } : {};

const short = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 12);

export function giveToServer(path: string): void {
	if (isRoot) chownSync(path, nobody, nobody);
}

/** Makes a folder that only the server's user may open. */
export function makePrivate(folder: string): void {
	mkdirSync(folder, { mode: 0o700 });
	giveToServer(folder);
}

/**
 * Makes the home and gives its real path. As root under a folder that others may not pass (a root's own home, often),
 * the server couldn't reach its data there: then the home is a link into /var/lib.
 */
export function makeHome(folder: string): string {
	const wanted = resolve(folder);
	try {
		mkdirSync(dirname(wanted), { recursive: true });
		if (!existsSync(wanted) && isRoot && !isOpenToOthers(realpathSync(dirname(wanted)))) {
			const elsewhere = join('/var/lib/skirtwright', short(wanted));
			mkdirSync(elsewhere, { recursive: true, mode: 0o755 });
			symlinkSync(elsewhere, wanted);
		}
		mkdirSync(wanted, { recursive: true, mode: 0o755 });
	} catch (problem) {
		throw new CannotStart(`The folder for the class’s records, ${wanted}, can’t be made: ${(problem as Error).message}. Give SKIRTWRIGHT_DATA a folder that may be written.`);
	}
	const home = realpathSync(wanted);
	if (isRoot && !isOpenToOthers(home)) {
		throw new CannotStart(`The records are in ${home}, and the database’s own user can’t get there. Let others pass its folders (chmod o+x), or give SKIRTWRIGHT_DATA another folder.`);
	}
	return home;
}

function isOpenToOthers(folder: string): boolean {
	const parent = dirname(folder);
	return (statSync(folder).mode & 0o001) !== 0 && (parent === folder || isOpenToOthers(parent));
}

/** The folder for the server's socket. A socket's path may have 103 bytes at most, so it is under the temp folder. */
export function makeSocketFolder(home: string): string {
	const name = `skirtwright-${short(home)}`;
	const folder = [tmpdir(), '/tmp'].map((temp) => join(temp, name)).find((path) => Buffer.byteLength(path) < 85) ?? join('/tmp', name);
	if (!existsSync(folder)) makePrivate(folder);
	const { uid, mode } = lstatSync(folder);
	// Someone else's folder under that name could listen in.
	if (!lstatSync(folder).isDirectory() || uid !== (serverUser.uid ?? process.getuid?.())) {
		throw new CannotStart(`${folder} belongs to someone else, so the database won’t use it. Remove it and start again.`);
	}
	if ((mode & 0o777) !== 0o700) chmodSync(folder, 0o700);
	return folder;
}
