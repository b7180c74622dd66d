import type { Sql } from 'postgres';
import type { Asker, Membership } from './lib/server/asker.ts';

declare global {
	namespace App {
		interface Error {
			message: string;
			/** For the person to quote; the log has the rest under it. */
			id?: string;
		}
		interface Locals {
			sql: Sql;
			/** Who is signed in. */
			asker: Asker | null;
			/** The asker's membership of the class in the address. Admitted, wherever a `[class]` route is reached. */
			membership: Membership | null;
			/** Set when the database went away while this request was answered. */
			away?: true;
		}
	}
}
