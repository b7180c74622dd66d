import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { devDatabase } from './src/commands/dev-database.ts';

export default defineConfig({
	plugins: [sveltekit(), devDatabase()],
	server: { fs: { allow: ['content'] } },
	test: {
		include: ['test/**/*.test.ts'],
		exclude: ['test/browser/**', 'test/bench/**'],
		globalSetup: 'test/server/servers.ts',
		// Only so that a hang ends: no test asserts how long it takes, and a busy machine is not a failure.
		testTimeout: 180_000,
		hookTimeout: 180_000
	}
});
