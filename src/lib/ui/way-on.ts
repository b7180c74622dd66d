/** Where to go after signing in, as `?next=` says: only ever a page of ours. */
export function wayOn(url: URL): string | null {
	const next = url.searchParams.get('next');
	if (next === null || !next.startsWith('/')) return null;
	// `//elsewhere` and `/\elsewhere` begin with a slash too, and lead away.
	if (!URL.canParse(next, url)) return null;
	const there = new URL(next, url);
	return there.origin === url.origin ? there.pathname + there.search : null;
}
