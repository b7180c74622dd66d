import { redirect, type RequestHandler } from '@sveltejs/kit';
import { dropSessionCookie, endSession, readSessionCookie } from '$lib/server/session.ts';

export const POST: RequestHandler = async ({ locals, cookies, url }) => {
	const id = readSessionCookie(cookies, url);
	if (id && locals.asker) await endSession(locals.sql, id);
	dropSessionCookie(cookies, url);
	redirect(303, '/');
};
