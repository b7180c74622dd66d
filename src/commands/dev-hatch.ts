// What `npm start` asks before the app, `npm run dev` asks too; loaded anew when its sources change.
import type { Plugin } from 'vite';
import type { Hatch } from '../lib/server/hatch.ts';

export function devHatch(): Plugin {
	return {
		name: 'skirtwright-dev-hatch',
		configureServer(server) {
			server.middlewares.use((request, response, next) => {
				void server.ssrLoadModule('/src/routes/skirt/[class]/log/hatch.server.ts').then(({ log }) => {
					if (!(log as Hatch)(request, response)) next();
				}, next);
			});
		}
	};
}
