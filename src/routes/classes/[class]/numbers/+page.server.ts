import { TABLE } from '../table-key.ts';
import { readTable } from '../table.server.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, url, depends }) => {
	depends(TABLE);
	const { rows } = await readTable(locals, params.class);
	return { rows, after: rows.find(({ memberId }) => memberId === url.searchParams.get('after')) ?? null, now: Date.now(), classId: params.class };
};
