// Where a join code leads: this server's address as the request came.
import { hallAddresses } from '$lib/server/host.ts';
import type { JoinCode } from '$lib/server/class.ts';
import { qrOf, type QrModules } from '$lib/ui/qr.ts';

export interface JoinSheet {
	/** Shown as `k7qm-2xpd`. */
	readonly code: string;
	readonly address: string;
	readonly qr: QrModules;
	/** Milliseconds since 1970. */
	readonly expiresAt: number;
}

export function joinSheet({ code, expiresAt }: JoinCode, url: URL): JoinSheet {
	const address = `${url.origin}/join/${code}`;
	return { code: `${code.slice(0, 4)}-${code.slice(4)}`, address, qr: qrOf(address), expiresAt };
}

/** Opened on the computer it runs on: that address leads no phone here. */
export const isOnlyHere = (url: URL): boolean => ['localhost', '127.0.0.1', '[::1]'].includes(url.hostname);

/** Under which addresses this page is found from the hall, if this one isn't. */
export function fromTheHall(url: URL): readonly string[] {
	if (!isOnlyHere(url)) return [];
	return hallAddresses().filter((host) => !host.startsWith('[')).slice(0, 3).map((host) => `${url.protocol}//${host}${url.port && `:${url.port}`}${url.pathname}`);
}
