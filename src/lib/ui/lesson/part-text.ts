// A part's text as a component, fetched by itself, so that a page loads one part and no more.
import type { Component } from 'svelte';
import lessons from 'virtual:lesson-texts';

/** `part` is a part's id, or `lesson` for the welcome. */
export async function partText(slug: string, part: string): Promise<Component<Record<string, unknown>>> {
	const parts = (await lessons[slug]?.())?.default;
	const found = parts?.[part];
	if (!found) throw new Error(`No text for part ${part} of lesson ${slug}`);
	return (await found()).default;
}
