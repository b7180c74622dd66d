// Before the tests: starts an embedded server in a folder of its own, and names the other one if there is one.
import { mkdtempSync, rmSync, chmodSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { startEmbedded } from '../../src/lib/server/embedded-postgres.ts';

export interface Server {
	readonly name: string;
	/** An address at which databases may be made. */
	readonly url: string;
}

declare module 'vitest' {
	export interface ProvidedContext {
		servers: readonly Server[];
	}
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-test-'));
	chmodSync(folder, 0o755);
	const embedded = await startEmbedded(join(folder, 'postgres'));
	const servers: Server[] = [{ name: 'the embedded server', url: embedded.url }];
	const other = process.env.TEST_DATABASE_URL;
	if (other) servers.push({ name: 'the server of TEST_DATABASE_URL', url: other });
	project.provide('servers', servers);
	return async () => {
		await embedded.leave();
		rmSync(folder, { recursive: true, force: true });
	};
}
