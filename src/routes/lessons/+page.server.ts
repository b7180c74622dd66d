import { shelf } from '$lib/ui/lesson/shelf.ts';
import { stagesOf } from '$lib/lesson/lesson.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = () => ({
	lessons: shelf.map((lesson) => ({
		slug: lesson.slug, title: lesson.title, summary: lesson.summary, kind: lesson.kind,
		stages: stagesOf(lesson).length,
		steps: stagesOf(lesson).reduce((sum, stage) => sum + stage.steps.length, 0),
		minutes: lesson.parts.reduce((sum, part) => sum + part.minutes, 0)
	}))
});
