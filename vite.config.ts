import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	server: { fs: { allow: ['content'] } },
	test: { include: ['test/**/*.test.ts'], exclude: ['test/browser/**', 'test/bench/**'] }
});
