import { error, fail } from '@sveltejs/kit';
import { newJoinCode, readClass, readJoinCode } from '$lib/server/class.ts';
import { admit, readMembers, remove, setRole, turnAway } from '$lib/server/member.ts';
import { TABLE } from '../table-key.ts';
import { fromTheHall, isOnlyHere, joinSheet } from './join-address.server.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

/** How long a join code may hold, in minutes. */
const holds = [{ value: '60', label: 'an hour' }, { value: '240', label: '4 hours' }, { value: '1440', label: 'a day' }, { value: '10080', label: 'a week' }];

export const load: PageServerLoad = async ({ locals: { sql, asker, membership }, params, url, depends }) => {
	depends(TABLE);
	if (!asker || !membership) error(404);
	const teaches = membership.role === 'teacher';
	const [held, members, code] = await Promise.all([readClass(sql, asker, params.class), readMembers(sql, asker, params.class), teaches ? readJoinCode(sql, asker, params.class) : null]);
	return {
		seats: { of: held.seats, taken: members.filter(({ role }) => role !== 'teacher').length },
		change: `/classes/${params.class}/change`, changed: url.searchParams.has('changed') ? `${held.title}, ${held.firstDay} to ${held.lastDay}` : null,
		holds, root: `/classes/${params.class}/people`, now: Date.now(),
		people: members.map(({ memberId, name, role, status, askedAt, hasCard }) => ({ memberId, name, role, status, askedAt, hasCard })),
		sheet: code && joinSheet(code, url), onlyHere: isOnlyHere(url), elsewhere: teaches ? fromTheHall(url) : []
	};
};

/** What a button does to one member, and what is said after. */
const act = (does: (event: RequestEvent, memberId: string, form: FormData) => Promise<{ readonly moved: boolean; readonly says: (name: string) => string }>) =>
	async (event: RequestEvent) => {
		const { sql, asker } = event.locals;
		if (!asker) error(404);
		const form = await event.request.formData();
		const memberId = String(form.get('member') ?? '');
		const member = (await readMembers(sql, asker, event.params.class)).find((one) => one.memberId === memberId);
		const { moved, says } = await does(event, memberId, form);
		return moved && member ? { of: 'who', said: says(member.name) } : fail(400, { of: 'who', said: 'Someone has decided that meanwhile. This is how it stands.' });
	};

export const actions: Actions = {
	admit: act(async ({ locals: { sql, asker }, params }, id) => ({ moved: await admit(sql, asker!, params.class, id), says: (name) => `${name} is in.` })),
	away: act(async ({ locals: { sql, asker }, params }, id) => ({ moved: await turnAway(sql, asker!, params.class, id), says: (name) => `${name} was turned away, and may ask again.` })),
	remove: act(async ({ locals: { sql, asker }, params }, id) => ({ moved: await remove(sql, asker!, params.class, id), says: (name) => `${name} is no longer in this class, and the card has ended.` })),
	role: act(async ({ locals: { sql, asker }, params }, id, form) => {
		const role = form.get('role');
		if (role !== 'helper' && role !== 'learner') error(400, 'There is no such role. Load the page again.');
		return {
			moved: await setRole(sql, asker!, params.class, id, role),
			says: (name) => (role === 'helper' ? `${name} helps now: sees the table and answers hands, and opens no one’s figures.` : `${name} is a learner again.`)
		};
	}),
	async code({ locals: { sql, asker }, params, request }) {
		if (!asker) error(404);
		const minutes = (await request.formData()).get('minutes');
		if (!holds.some(({ value }) => value === minutes)) return fail(400, { of: 'code', said: 'Choose how long the new join code holds. Nothing has changed yet.' });
		await newJoinCode(sql, asker, params.class, new Date(), Number(minutes));
		return { of: 'code', said: 'This is the new join code. The one before it opens nothing now.' };
	}
};
