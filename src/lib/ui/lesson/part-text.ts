// A part's text as a component, fetched by itself, so that a page loads one part and no more.
import type { Component } from 'svelte';
import { slugOf } from '$lib/lesson/place.ts';

const texts = import.meta.glob<{ default: Component }>('/content/lessons/*/*.md');
const nameOf = (path: string) => path.replace(/^.*\/(?:\d+-)?|\.md$/g, '');

/** `part` is a part's id, or `lesson` for the welcome. */
export async function partText(slug: string, part: string): Promise<Component> {
	const found = Object.entries(texts).find(([path]) => slugOf(path) === slug && nameOf(path) === part);
	if (!found) throw new Error(`No text for part ${part} of lesson ${slug}`);
	return (await found[1]()).default;
}
