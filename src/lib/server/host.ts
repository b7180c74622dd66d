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

let found: { readonly names: readonly string[]; readonly at: number } = { names: [], at: -Infinity };
/**
 * The machine's own names and addresses: a laptop changes them with the hall it is in. Looked up at most every five
 * seconds, since asking the system takes as long as much of a tick.
 */
export function ownHosts(): readonly string[] {
	const now = performance.now();
	if (now - found.at > 5000) {
		const name = hostname().toLowerCase();
		found = { names: ['localhost', '127.0.0.1', '[::1]', name, `${name}.local`, ...hallAddresses()], at: now };
	}
	return found.names;
}
