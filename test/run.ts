// The whole test command: types, tests, build, journeys. Its last line is `N passed, N failed`, and nothing is skipped.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildIfNeeded } from '../src/commands/build.ts';
import { provideTools } from './tools.ts';

interface Count {
	readonly passed: number;
	readonly failed: number;
}

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = mkdtempSync(join(tmpdir(), 'skirtwright-report-'));
const say = (text: string): void => void process.stdout.write(`${text}\n`);

/** Runs a program of node_modules with its output as it comes; true when it ended well. */
function run(script: string, args: readonly string[], env: Readonly<Record<string, string>> = {}): boolean {
	const path = join(root, 'node_modules', script);
	return spawnSync(process.execPath, [path, ...args], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], env: { ...process.env, ...env } }).status === 0;
}

/** What a part's report says. A part that ended badly without a failed test, or without a report, counts as one failed. */
function count(ended: boolean, report: string, read: (report: never) => Count): Count {
	const counted = existsSync(report) ? read(JSON.parse(readFileSync(report, 'utf8')) as never) : { passed: 0, failed: 0 };
	return ended ? counted : { ...counted, failed: Math.max(1, counted.failed) };
}

function checkTypes(): Count {
	const ended = run('@sveltejs/kit/svelte-kit.js', ['sync']) && run('svelte-check/bin/svelte-check', ['--tsconfig', './tsconfig.json', '--threshold', 'error']);
	return { passed: ended ? 1 : 0, failed: ended ? 0 : 1 };
}

function runTests(): Count {
	const report = join(reports, 'tests.json');
	const ended = run('vitest/vitest.mjs', ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`]);
	return count(ended, report, (said: { numPassedTests: number; numFailedTests: number; numPendingTests: number; numTodoTests: number }) => ({
		passed: said.numPassedTests,
		// A test that was skipped, or whose preparation failed, showed nothing.
		failed: said.numFailedTests + said.numPendingTests + said.numTodoTests
	}));
}

async function build(): Promise<Count> {
	try {
		await buildIfNeeded(root, () => say('Building …'));
		return { passed: 1, failed: 0 };
	} catch (problem) {
		say((problem as Error).message);
		return { passed: 0, failed: 1 };
	}
}

function walkJourneys(): Count {
	const folder = join(root, 'test', 'browser');
	const specs = existsSync(folder) ? readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.spec.ts')) : [];
	if (specs.length === 0) return { passed: 0, failed: 0 };
	const report = join(reports, 'journeys.json');
	const ended = run('@playwright/test/cli.js', ['test', '--config', 'test/browser/playwright.config.ts', '--reporter=list,json'], { PLAYWRIGHT_JSON_OUTPUT_NAME: report });
	return count(ended, report, ({ stats }: { stats: { expected: number; unexpected: number; flaky: number; skipped: number } }) => ({
		passed: stats.expected, failed: stats.unexpected + stats.flaky + stats.skipped
	}));
}

const parts: readonly (readonly [string, () => Count | Promise<Count>])[] = [
	['Types', checkTypes], ['Tests', runTests], ['Build', build], ['Journeys in a browser', walkJourneys]
];

const counts: Count[] = [];
const toType = provideTools();
if (toType !== null) {
	say(`The tests need a little more than npm brings. Type this, then npm test again:\n\n  ${toType}\n`);
	counts.push({ passed: 0, failed: 1 });
} else {
	for (const [title, part] of parts) {
		say(`\n── ${title}\n`);
		counts.push(await part());
	}
}
rmSync(reports, { recursive: true, force: true });
const passed = counts.reduce((sum, count) => sum + count.passed, 0);
const failed = counts.reduce((sum, count) => sum + count.failed, 0);
say(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
