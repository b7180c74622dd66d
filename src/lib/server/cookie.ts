// The cookies of a request that Node carries, read and set as RFC 6265 writes them.
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { CookieLook, Jar } from './session.ts';

/** Our names and values are letters, digits, - and _, so nothing needs quoting; a value with anything else opens nothing. */
const line = (name: string, value: string, { path, maxAge, secure }: CookieLook): string =>
	`${name}=${value}${maxAge === undefined ? '' : `; Max-Age=${maxAge}`}; Path=${path}; HttpOnly${secure ? '; Secure' : ''}; SameSite=Lax`;

export function cookiesOf(request: IncomingMessage, response: ServerResponse): Jar {
	const set = (name: string, value: string, look: CookieLook): void => void response.appendHeader('set-cookie', line(name, value, look));
	return {
		get(name) {
			// The first of a name counts.
			for (const pair of (request.headers.cookie ?? '').split(';')) {
				const [found, value] = pair.split('=', 2);
				if (found!.trim() === name) return value?.trim();
			}
			return undefined;
		},
		set,
		delete: (name, look) => set(name, '', { ...look, maxAge: 0 })
	};
}
