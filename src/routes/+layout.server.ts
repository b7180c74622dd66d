import type { Place } from '$lib/ui/mast.ts';
import type { LayoutServerLoad } from './$types';

const lessons: Place = { href: '/lessons', label: 'Lessons' };

/** Where one can go from anywhere, by who is signed in. */
export const load: LayoutServerLoad = ({ locals: { asker } }) => {
	const places: readonly Place[] = !asker
		? [lessons, { href: '/sign-in', label: 'Sign in' }]
		: asker.person.canTeach
			? [{ href: '/classes', label: 'Classes' }, lessons, { href: '/account', label: 'Account' }]
			: [{ href: '/', label: 'My skirt' }, lessons, { href: '/account', label: 'Account' }];
	return { places, signedIn: Boolean(asker) };
};
