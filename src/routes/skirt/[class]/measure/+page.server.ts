import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent }) => {
	const { root, mast } = await parent();
	return { mast: { ...mast, back: { href: root, label: 'My skirt' }, right: { href: `${root}/draft`, label: 'My draft' } } };
};
