import adapter from '@sveltejs/adapter-node';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
import { mdsvex } from 'mdsvex';
import { lessonPreprocess } from './src/lib/lesson/preprocess.js';

/** @type {import('@sveltejs/kit').Config} */
export default {
	extensions: ['.svelte', '.md'],
	preprocess: [
		vitePreprocess(),
		// smartypants would bend 1/2" and expressions inside lessons
		mdsvex({ extensions: ['.md'], smartypants: false }),
		lessonPreprocess()
	],
	kit: {
		adapter: adapter(),
		files: { assets: 'src/static' },
		// A page that isn't there is shown at whatever address was asked for: its parts are found from the root.
		paths: { relative: false },
		// Ours to check, for every method and every kind of body, and to answer with a page: hooks.server.ts, isFromHere.
		csrf: { trustedOrigins: ['*'] },
		csp: {
			mode: 'nonce',
			directives: {
				'default-src': ['self'],
				'script-src': ['strict-dynamic'],
				'style-src': ['self', 'unsafe-inline'],
				'img-src': ['self', 'data:'],
				'font-src': ['self', 'data:'],
				'connect-src': ['self'],
				'object-src': ['none'],
				'base-uri': ['none'],
				'form-action': ['self'],
				'frame-ancestors': ['none']
			}
		}
	}
};
