// What a lesson page's address says.
import type { Unit } from '$lib/class/event.ts';
import { placesOffered } from '$lib/class/made.ts';

/** `?unit=in` for inches; centimetres otherwise. */
export const unitOf = (url: URL): Unit => (url.searchParams.get('unit') === 'in' ? 'in' : 'cm');

/** `?places=12`: at how many places round the hem is read. */
export const placesIn = (url: URL): number => placesOffered.find((offered) => String(offered) === url.searchParams.get('places')) ?? placesOffered[0];
