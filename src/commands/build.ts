// Builds the app when the build isn't of these files.
import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CannotStart } from '../lib/server/cannot-start.ts';

const sources = ['src', 'content', 'package-lock.json', 'svelte.config.js', 'tsconfig.json', 'vite.config.ts'];

/** SHA-256 over names and contents: dates change with every copy. */
function digestSources(root: string): string {
	const hash = createHash('sha256').update(process.version);
	const add = (path: string): void => {
		hash.update(`\0${path}\0`).update(readFileSync(join(root, path)));
	};
	for (const source of sources.filter((path) => existsSync(join(root, path)))) {
		if (source.includes('.')) add(source);
		else {
			const entries = readdirSync(join(root, source), { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
			for (const path of entries.map((entry) => join(entry.parentPath, entry.name).slice(root.length)).sort()) add(path);
		}
	}
	return hash.digest('hex');
}

/** Makes sure that `build/` is of the files as they are; `onBuild` is called when that takes a while. `root` ends in a slash. */
export async function buildIfNeeded(root: string, onBuild: () => void): Promise<void> {
	const stamp = join(root, 'build', 'stamp');
	const digest = digestSources(root);
	if (existsSync(stamp) && readFileSync(stamp, 'utf8') === digest) return;
	onBuild();
	await new Promise<void>((built, failed) => {
		const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
		execFile(process.execPath, [vite, 'build', '--logLevel', 'warn'], { cwd: root, maxBuffer: 1 << 26 }, (problem, stdout, stderr) => {
			if (problem) failed(new CannotStart(`Skirtwright couldn’t be built. The builder says:\n\n${stdout}${stderr}`));
			else built();
		});
	});
	writeFileSync(stamp, digest);
}
