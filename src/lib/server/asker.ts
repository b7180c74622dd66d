// Who is asking, as the hook found out for this request. Every query takes an Asker.
import { error } from '@sveltejs/kit';
import type { ISql } from 'postgres';
import type { MemberRole } from '../class/permission.ts';

/** A connection to the database, or a transaction on one. */
export type Query = ISql<Record<never, never>>;

export interface Asker {
	readonly person: { readonly id: string; readonly name: string; readonly canTeach: boolean };
	/** The digest of her session's id, in hex: names the session without being able to open it. */
	readonly sessionId: string;
}

/** One person in one class. */
export interface Membership {
	readonly classId: string;
	/** The slug of the lesson that the class is held on. */
	readonly lesson: string;
	readonly memberId: string;
	readonly role: MemberRole;
	readonly status: 'asked' | 'admitted' | 'removed';
	readonly name: string;
}

/** Ids of classes and members are our own letters. Anything else is nobody's, and never reaches the database. */
export const isId = (text: string): boolean => /^[0-9a-z]{1,32}$/.test(text);

/** What is not there and what is not hers look the same from outside. */
export const notFound = (): never => error(404);
