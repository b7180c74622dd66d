import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const page = readFileSync('src/error.html', 'utf8');

test('what is refused before a page is made is told in our own page, which needs nothing else of the app', () => {
	expect(page).toContain('%sveltekit.error.message%');
	expect(page).toContain('%sveltekit.status%');
	expect(page).toContain('<html lang="en"');
	expect(page).not.toMatch(/<script|@import|url\(|https?:/);
	expect([...page.matchAll(/(?:href|src)="([^"]*)"/g)].map(([, to]) => to)).toEqual(['/icon.svg', '/']);
});

test('its colours are the house’s own', () => {
	const tokens = readFileSync('src/lib/ui/tokens.css', 'utf8');
	const [light, dark] = [/:root \{([^}]*)\}/, /prefers-color-scheme: dark\) \{\s*:root \{([^}]*)\}/].map((block) => [block.exec(tokens)![1]!, block.exec(page)![1]!] as const) as
		[readonly [string, string], readonly [string, string]];
	const colours = (text: string) => [...text.matchAll(/(--[\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, colour]) => `${name} ${colour}`);
	for (const [house, own] of [light, dark]) {
		expect(colours(own).length).toBeGreaterThan(3);
		for (const one of colours(own)) expect(colours(house)).toContain(one);
	}
});
