import { partText } from '$lib/ui/lesson/part-text.ts';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ data, params, parent }) => {
	const { lesson } = await parent();
	return { ...data, text: await partText(lesson.slug, params.part) };
};
