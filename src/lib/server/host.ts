// The names this server answers to. A page elsewhere may have its own name lead here; that name isn't in the list.
import { hostname, networkInterfaces } from 'node:os';

/** The host's name from a `Host` header, without the port; null when it is none. */
export function hostIn(header: string | undefined): string | null {
	const name = /^(\[[0-9a-f:.]+\]|[a-z0-9._-]+)(:\d{1,5})?$/i.exec(header ?? '')?.[1];
	return name?.toLowerCase() ?? null;
}

/** The addresses at which others in the hall find this machine. */
export function hallAddresses(): readonly string[] {
	return Object.values(networkInterfaces())
		.flatMap((list) => list ?? [])
		.filter(({ internal, address }) => !internal && !address.startsWith('fe80:'))
		.map(({ family, address }) => (family === 'IPv6' ? `[${address}]` : address));
}

/** The machine's own names and addresses, as they are now: a laptop changes them with the hall it is in. */
export function ownHosts(): readonly string[] {
	const name = hostname().toLowerCase();
	return ['localhost', '127.0.0.1', '[::1]', name, `${name}.local`, ...hallAddresses()];
}
