// Secrets at rest are SHA-256 digests; secrets themselves are drawn here.
import { hash, randomBytes } from 'node:crypto';
import { ENGINE } from '../drafting/draft.ts';
import type { AnyDraft } from '../drafting/style.ts';

export const sha256 = (text: string): Buffer => hash('sha256', text, 'buffer');

// No i, l, o or u: what can be misread, and most accidental words, are left out.
const letters = '0123456789abcdefghjkmnpqrstvwxyz';

/** `length` letters of 5 bits each. */
export function drawLetters(length: number): string {
	return Array.from(randomBytes(length), (byte) => letters[byte % 32]).join('');
}

/** A secret of 128 bits or more, fit for an address. */
export const drawSecret = (): string => drawLetters(26);

/** Whether a form brought back a secret as `drawSecret` draws them. */
export const isSecret = (text: unknown): text is string => typeof text === 'string' && /^[0-9a-hjkmnp-tv-z]{26}$/.test(text);

/** The same value always gives the same text: keys sorted, absent ones left out. Numbers as JSON prints them. */
export function canonicalJson(value: unknown): string {
	if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
	if (value !== null && typeof value === 'object') {
		const parts = Object.entries(value)
			.filter(([, part]) => part !== undefined)
			.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
			.map(([key, part]) => `${JSON.stringify(key)}:${canonicalJson(part)}`);
		return `{${parts.join(',')}}`;
	}
	return JSON.stringify(value) ?? 'null';
}

/** What a clearance remembers of its inputs: SHA-256 of their canonical JSON, in hex. */
export const digest = (inputs: unknown): string => sha256(canonicalJson(inputs)).toString('hex');

/**
 * Tells the papers of one draft from those of another. It is taken of the pieces, which are what the paper shows, so
 * that nobody can find readings from it that the paper doesn't give away.
 */
export const draftMark = ({ pieces }: AnyDraft): string => digest({ engine: ENGINE, pieces }).slice(0, 8);
