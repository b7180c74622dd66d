import { defineConfig } from '@playwright/test';
import { findChromium } from '../tools.ts';

const executablePath = findChromium();

export default defineConfig({
	testDir: '.',
	testMatch: '**/*.spec.ts',
	outputDir: '../../test-results',
	forbidOnly: true,
	retries: 0,
	// One app and one database for all; two browsers at once would fight for the two cores of a small machine.
	workers: 1,
	timeout: 240_000,
	use: {
		locale: 'en-GB',
		// A button that isn't there is said soon.
		actionTimeout: 30_000,
		screenshot: 'only-on-failure',
		launchOptions: {
			...(executablePath ? { executablePath } : {}),
			args: [
				'--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
				'--disable-background-networking', '--disable-component-update', '--disable-sync'
			]
		}
	}
});
