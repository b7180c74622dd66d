// What a style adds to the words of every skirt, and how the two are put together.
import type { Check, WayOut } from '../../drafting/check.ts';
import type { Unit } from '../../drafting/length.ts';
import type { Issue } from '../../drafting/result.ts';
import { checkSays, checkSentence, wayOutSentence } from './check.ts';
import { issueSentence } from './issue.ts';

/** A check of any style. */
export interface ToldBack {
	readonly code: string;
	readonly severity: 'good' | 'note' | 'caution' | 'stop';
	readonly figures: Readonly<Record<string, number>>;
	readonly about?: string;
	readonly waysOut: readonly WayOut[];
}

/** `Code`: the codes of its own, and those of every skirt that it says in other words. */
export interface StyleWords<Code extends string> {
	readonly checks: Readonly<Record<Code, (check: ToldBack, unit: Unit) => string>>;
	/** `ways`: the ways on in a sentence of their own with a space before it, or nothing. */
	readonly issues: Readonly<Record<string, (issue: Issue, unit: Unit, ways: string) => string>>;
	/** Null where every skirt has the words. */
	readonly way: (way: WayOut, unit: Unit) => string | null;
}

type AnyWords = StyleWords<string>;

export const styleWayOutSentence = (words: AnyWords, way: WayOut, unit: Unit): string => words.way(way, unit) ?? wayOutSentence(way, unit);

/** A check of a code without words is our own mistake, and is shown by its name. */
export function styleCheckSentence(words: AnyWords, check: ToldBack, unit: Unit): string {
	const says = own(words.checks, check.code);
	if (says) return says(check, unit);
	return isOfEvery(check) ? checkSentence(check, unit) : `There is something to look at here (${check.code}).`;
}
const isOfEvery = (check: ToldBack): check is Check => Object.hasOwn(checkSays, check.code);

export function styleIssueSentence(words: AnyWords, issue: Issue, unit: Unit): string {
	const ways = issue.waysOut?.length ? ` ${issue.waysOut.map((way) => styleWayOutSentence(words, way, unit)).join(', or ')}.` : '';
	return own(words.issues, issue.code)?.(issue, unit, ways) ?? issueSentence(issue, unit);
}

const own = <Says>(from: Readonly<Record<string, Says>>, code: string): Says | undefined => (Object.hasOwn(from, code) ? from[code] : undefined);
