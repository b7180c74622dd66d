import { sampleDraft } from '$lib/lesson/sample.ts';
import { sectorDiagram } from '$lib/paper/diagrams/sector.ts';
import { classesOf } from '$lib/server/class.ts';
import { shelf } from '$lib/ui/lesson/shelf.ts';
import type { PageServerLoad } from './$types';

/** A stranger sees what it is about: the first full lesson's skirt, drawn from its sample numbers. */
function firstDrawing() {
	const lesson = shelf.find(({ kind }) => kind === 'full');
	return lesson ? sectorDiagram(sampleDraft(lesson.style, 'cm'), { unit: 'cm', layout: 'half', emphasis: 'waist' }) : null;
}

export const load: PageServerLoad = async ({ locals }) => {
	const { asker } = locals;
	if (!asker) return { name: null, canTeach: false, mine: [], drawing: firstDrawing() };
	const mine = (await classesOf(locals.sql, asker)).map(({ class: { id, title }, membership: { role, status } }) => ({ id, title, role, status }));
	return { name: asker.person.name, canTeach: asker.person.canTeach, mine, drawing: null };
};
