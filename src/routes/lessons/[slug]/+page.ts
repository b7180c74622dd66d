import { partText } from '$lib/ui/lesson/part-text.ts';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ data, params }) => ({ ...data, text: await partText(params.slug, 'lesson') });
