import { partText } from '$lib/ui/lesson/part-text.ts';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ data, params, parent }) => {
	const { lesson } = await parent();
	// The fields for what is measured on the real thing come only with a stage that asks for some.
	const reads = !data.sample && data.part.steps.some(({ reads }) => reads !== undefined);
	const [text, panel] = await Promise.all([partText(lesson.slug, params.part), reads ? import('../MadePanel.svelte') : null]);
	return { ...data, text, MadePanel: panel?.default ?? null };
};
