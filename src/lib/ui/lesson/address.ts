// What a lesson page's address says.
import type { Unit } from '$lib/class/event.ts';

/** `?unit=in` for inches; centimetres otherwise. */
export const unitOf = (url: URL): Unit => (url.searchParams.get('unit') === 'in' ? 'in' : 'cm');
