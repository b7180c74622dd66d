// Gives `npm run dev` its database.
import type { Plugin } from 'vite';
import { isDatabaseOpen, useDatabase } from '../lib/server/database.ts';
import { readSettings } from '../lib/server/settings.ts';
import { openPlatform, root } from './open.ts';

export function devDatabase(): Plugin {
	return {
		name: 'skirtwright-dev-database',
		apply: (_, { command, isPreview }) => command === 'serve' && !isPreview && !process.env.VITEST,
		async configureServer() {
			// The server starts anew when its config changes; the database stays open.
			if (isDatabaseOpen()) return;
			const { sql, close } = await openPlatform(readSettings(process.env, root));
			useDatabase(sql);
			const stop = (): void => void close().finally(() => process.exit());
			process.once('SIGINT', stop);
			process.once('SIGTERM', stop);
		}
	};
}
