import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { devDatabase } from './src/commands/dev-database.ts';
import { devHatch } from './src/commands/dev-hatch.ts';
import { lessonTexts } from './src/commands/lesson-texts.ts';

export default defineConfig({
	plugins: [lessonTexts(), sveltekit(), devDatabase(), devHatch()],
	// Only a page's styles are asked for ahead of its scripts when one walks from page to page: the list of every script of
	// every page would weigh on each first load. What a page itself needs first, its document already names.
	build: {
		modulePreload: { resolveDependencies: (_, files) => files.filter((file) => file.endsWith('.css')) },
		// What every part of a lesson is written with comes as one script, and what a length is typed with as another:
		// twenty small ones weigh more than they hold.
		rolldownOptions: { output: { codeSplitting: { groups: [
			{ name: 'lesson', test: /src\/lib\/(ui\/lesson\/(Caution|Drawing|Figure|FixedLength|Right|Slip|Step|Term|Sum|Working)\.svelte|ui\/(Length|Words|Drawing)\.svelte|lesson\/(shown-figure|figure|tolerance|fixed-length)\.ts|ui\/lesson\/reader\.ts)$/ },
			{ name: 'typing', test: /src\/lib\/ui\/(LengthField\.svelte|ChoiceRow\.svelte|Eighths\.svelte|echo\.ts|wording\/length\.ts)$/ }
		] } } }
	},
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
