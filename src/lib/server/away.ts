// The database can't be reached: what the driver and the server call it, and the page that says so.
import type { Asked } from './request.ts';

const codes = new Set([
	'CONNECTION_CLOSED', 'CONNECTION_DESTROYED', 'CONNECTION_ENDED', 'CONNECT_TIMEOUT',
	'ECONNREFUSED', 'ECONNRESET', 'ENOENT', 'EPIPE', 'ETIMEDOUT', 'EHOSTUNREACH', 'ENOTFOUND', 'EAI_AGAIN',
	// PostgreSQL, appendix A: shutting down by command, after a crash, not yet taking connections; too many of them.
	'57P01', '57P02', '57P03', '53300'
]);

export function isAway(error: unknown): boolean {
	const code = typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';
	return codes.has(code) || code.startsWith('08');
}

const escape = (text: string): string => text.replace(/[&<>"]/g, (letter) => `&#${letter.charCodeAt(0)};`);

/** What a form said, so that it can be sent again from the page below: nothing typed is lost. */
export type Typed = readonly (readonly [name: string, value: string])[];

/**
 * A form's fields, from a copy of the request; null where it isn't whole or no form at all. Files can't be given back,
 * and a passphrase isn't shown to a page again.
 */
export async function readTyped(copy: Request): Promise<Typed | null> {
	const fields = await copy.formData().catch(() => null);
	return fields && [...fields].flatMap(([name, value]) => (typeof value === 'string' && !name.includes('passphrase') ? [[name, value] as const] : []));
}

/** What SvelteKit gives to a form's action: plain text too, which no form of ours sends. */
export const isForm = (request: Request): boolean =>
	request.method === 'POST' && /^(application\/x-www-form-urlencoded|multipart\/form-data|text\/plain)\b/i.test(request.headers.get('content-type') ?? '');

function page(retry: string, rest: string): string {
	return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
${retry}
<title>One moment – Skirtwright</title>
<style>
	:root { color-scheme: light dark; }
	body { max-width: 34rem; margin: 4rem auto; padding: 0 1rem; font: 1.125rem/1.5 system-ui, sans-serif; }
	a, button { display: inline-block; min-height: 3rem; padding: 0.75rem 1rem; font: inherit; }
</style>
<h1>We can’t reach the class’s records</h1>
<p>Nothing that was saved is lost.</p>
${rest}
<p>If it stays, tell whoever looks after this computer.</p>
</html>
`;
}

const lookPage = page(
	'<meta http-equiv="refresh" content="5">',
	'<p>This page tries again every five seconds.</p>\n<p><a href="">Try now</a></p>'
);

const sendPage = (url: URL, typed: Typed): string => page('', `<p>What you sent isn’t saved yet. It is kept on this page: wait a moment, then send it again.</p>
<form method="post" action="${escape(url.pathname + url.search)}">
${typed.map(([name, value]) => `<input type="hidden" name="${escape(name)}" value="${escape(value)}">`).join('\n')}
<button>Send it again</button>
</form>`);

/** SvelteKit's own form for a refusal that leaves the page and what is typed on it as they are (devalue of `{issues: [{code, path}]}`). */
const enhanced = JSON.stringify({ type: 'failure', status: 503, data: '[{"issues":1},[2],{"code":3,"path":4},"database-away",""]' });

/** 503, for a person or for a program, and when to come back. */
export function awayResponse(request: Asked, url: URL, typed: Typed): Response {
	const json = (body: string): Response => answer(body, 'application/json');
	if (request.headers.get('x-sveltekit-action') === 'true') return json(enhanced);
	if (!request.headers.get('accept')?.includes('text/html')) return json(JSON.stringify({ issues: [{ code: 'database-away', path: '' }] }));
	return answer(request.method === 'POST' ? sendPage(url, typed) : lookPage, 'text/html; charset=utf-8');
}

const answer = (body: string, type: string): Response =>
	new Response(body, {
		status: 503,
		headers: {
			'content-type': type, 'retry-after': '5', 'cache-control': 'no-store',
			'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
		}
	});
