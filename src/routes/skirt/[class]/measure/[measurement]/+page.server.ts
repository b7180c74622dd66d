import { error, fail, redirect } from '@sveltejs/kit';
import { foldSkirt } from '$lib/class/skirt-state.ts';
import { isMeasurement } from '$lib/drafting/body.ts';
import { readEvents } from '$lib/server/log.ts';
import { drawIds, sayInForm } from '../../said.server.ts';
import { readReadings, typedReadings } from '../reading-form.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ params, parent }) => {
	if (!isMeasurement(params.measurement)) error(404, 'There is no measurement at this address.');
	const { root, mast } = await parent();
	return {
		measurement: params.measurement, ids: drawIds(2),
		mast: { ...mast, back: { href: `${root}/measure`, label: 'Numbers' } }
	};
};

export const actions: Actions = {
	async take({ request, locals, params }) {
		const { sql, asker, membership } = locals;
		if (!asker || !membership || !isMeasurement(params.measurement)) error(404);
		const form = await request.formData();
		const typed = typedReadings(form);
		const unit = form.get('unit') === 'in' ? 'in' : 'cm';
		const read = readReadings(typed, params.measurement, unit, foldSkirt(await readEvents(sql, asker, membership.memberId)));
		if (read.kind === 'refused') return fail(400, { issues: read.issues, typed });
		if (read.kind === 'asks') return fail(400, { asks: read.asks, typed });
		const said = await sayInForm(locals, form.getAll('id'), read.bodies);
		if (!said.ok) return fail(400, { issues: said.issues, typed });
		redirect(303, `/skirt/${params.class}/measure/${params.measurement}`);
	},
	/** The other unit. What is typed in the fields comes back as it was. */
	async unit({ request, locals }) {
		const form = await request.formData();
		const unit = form.get('to') === 'in' ? 'in' : 'cm';
		const said = await sayInForm(locals, [], [{ kind: 'preference', unit }]);
		return said.ok ? { typed: typedReadings(form) } : fail(400, { issues: said.issues, typed: typedReadings(form) });
	}
};
