// The database can't be reached: what the driver and the server call it, and the page that says so.

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

const page = `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="refresh" content="5">
<title>One moment – Skirtwright</title>
<style>
	:root { color-scheme: light dark; }
	body { max-width: 34rem; margin: 4rem auto; padding: 0 1rem; font: 1.125rem/1.5 system-ui, sans-serif; }
	a { display: inline-block; padding: 0.75rem 0; }
</style>
<h1>We can’t reach the class’s records</h1>
<p>Nothing that was saved is lost. What you sent a moment ago may not be saved: your device keeps ticks and sends them again.</p>
<p>This page tries again every five seconds. If it stays, tell whoever looks after this computer.</p>
<p><a href="">Try now</a></p>
</html>
`;

/** 503, for a person or for a program, and when to come back. */
export function awayResponse(request: Request): Response {
	const wantsPage = request.headers.get('accept')?.includes('text/html') ?? false;
	// A form that was sent would be sent again by reloading; a GET is repeated by the page itself.
	const repeats = request.method === 'GET' || request.method === 'HEAD';
	const body = repeats ? page : page.replace(/<meta http-equiv="refresh".*\n/, '').replace(/This page tries.*?\. /, '').replace(/<p><a.*\n/, '<p>Go back: what you typed is still there. Then send it again.</p>\n');
	return new Response(wantsPage ? body : JSON.stringify({ issues: [{ code: 'database-away', path: '' }] }), {
		status: 503,
		headers: { 'content-type': wantsPage ? 'text/html; charset=utf-8' : 'application/json', 'retry-after': '5', 'cache-control': 'no-store' }
	});
}
