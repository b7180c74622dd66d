// What the tests need beyond npm: a Chromium, and poppler to read PDFs back.
import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

function find(program: string): string | null {
	for (const folder of (process.env.PATH ?? '').split(delimiter)) {
		const path = join(folder, program);
		try {
			accessSync(path, constants.X_OK);
			return path;
		} catch {
			// Not in this folder.
		}
	}
	return null;
}

export function findChromium(): string | null {
	return process.env.CHROMIUM || ['chromium', 'chromium-browser', 'google-chrome'].map(find).find((path) => path !== null) || null;
}

const missing = (): readonly string[] => [
	...(findChromium() ? [] : ['chromium']),
	...(['pdftocairo', 'pdfinfo'].every(find) ? [] : ['poppler-utils'])
];

/** Installs what is missing where that is allowed; gives the line to type where it isn't, or null when all is there. */
export function provideTools(): string | null {
	const packages = missing();
	if (packages.length === 0) return null;
	if (process.getuid?.() === 0 && find('apt-get')) {
		process.stdout.write(`Installing ${packages.join(' and ')} for the tests …\n`);
		const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
		for (const args of [['update', '-qq'], ['install', '-y', '-qq', '--no-install-recommends', ...packages]]) {
			spawnSync('apt-get', args, { env, stdio: ['ignore', 'inherit', 'inherit'] });
		}
	}
	const still = missing();
	return still.length === 0 ? null : `sudo apt-get install -y ${still.join(' ')}`;
}
