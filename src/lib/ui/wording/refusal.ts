// What stands in the way at the door and in a class's forms: what happened, and how to mend it. Lengths are in issue.ts.
import type { Issue } from '../../drafting/result.ts';
import type { Unit } from '../../drafting/length.ts';
import { count } from './count.ts';
import { fine } from './long.ts';

type Says = (issue: Issue, unit: Unit) => string;
const number = (value: unknown): number => (typeof value === 'number' ? value : 0);

const says: Readonly<Record<string, string | Says>> = {
	// Names
	'name-missing': 'Write a first name or a nickname.',
	'name-unfit': 'Write the name on one line, in letters. Something in it can’t be shown.',
	'name-long': ({ expected, received }) => `That has ${number(received)} characters. Up to ${number(expected)} fit: shorten it a little.`,
	'name-taken': 'Someone signs in with that name already. Add an initial or a second name.',
	'name-taken-here': 'Someone in this class has that name already. Add an initial, so that your teacher can tell you apart.',
	// A class's rules
	'allowance-under-lesson': ({ figures }, unit) => `The steps of this lesson need ${fine(figures?.least, unit)} or more here. Write a wider allowance.`,
	// Her choices
	'not-a-share': 'A share of a circle runs from 0.1 to 2. Choose one of those that are shown.',
	// Signing in
	'name-or-passphrase-wrong': 'That name and passphrase don’t go together. Check both, and whether the capitals key is on.',
	'passphrase-short': ({ expected, received }) => `A passphrase has ${number(expected)} characters or more; this has ${number(received)}. Four or five words with spaces make a good one.`,
	'passphrase-long': ({ expected }) => `Up to ${number(expected)} characters fit. Shorten it.`,
	'passphrase-common': 'That is among the first that someone would guess. Choose words that only you would put together.',
	'passphrases-differ': 'The two are not the same. Type it again in both.',
	'current-missing': 'Type the passphrase that you sign in with now.',
	'current-wrong': 'That is not the passphrase you sign in with now. Check whether the capitals key is on.',
	'card-words-wrong': 'Those words don’t open a card in that class. Check the class code and each word. If you have a newer card, the old one has ended.',
	'card-words-count': ({ expected, received }) => `The card has ${number(expected)} words; this has ${number(received)}. Type them with a space between.`,
	'card-unknown': 'This card no longer opens anything. A newer one may have been made: use that, or ask your teacher for a new card.',
	'class-code-missing': 'Type the class code from your card.',
	'link-used': 'This link has been used already, or its time is over. Ask for a new one.',
	'try-later': 'That was ten times in a row. Wait five minutes, then try again.',
	'tried-too-often': 'This has been tried too often. Ask your teacher for a new card, or whoever runs this computer for a new link.',
	// Joining
	'code-missing': 'Type the join code from your teacher’s poster, or ask for it.',
	'code-unknown': 'No class has that join code now. Join codes run out: check each letter and figure, or ask your teacher for a new one.',
	'class-full': ({ expected }) => `This class has ${count(number(expected), 'seat', 'seats')}, and none is free. Ask your teacher.`,
	// A class's forms
	'not-a-lesson': 'Choose one of the lessons.',
	'not-a-date': 'Write a date from 2000 on, as year-month-day, such as 2026-03-05.',
	'ends-before-it-begins': 'The last day comes before the first. Change one of them.',
	'not-a-count': 'Write a whole number from 1 to 100 000, in figures.',
	'seats-taken': ({ expected }) => `${number(expected)} of the seats are taken, with those who have asked. Write that many or more, or remove someone first.`,
	'not-a-unit': 'Choose centimetres or inches.',
	'not-yes-or-no': 'Choose one or the other.',
	'not-rules': 'The rules did not arrive whole. Send the form again.',
	'gate-count': 'The gate has one to twenty items. Few and critical ones work best.',
	'gate-id': 'Two items of the gate were mixed up. Load the page again.',
	'gate-sentence': 'Each item is one sentence of up to 200 characters, in letters that can be shown. Write this one again.',
	// Asking to be cleared, and ticking
	'gate-unread': 'Read this line aloud and see that it is true, then tick it.',
	'second-missing': 'Write the name or initials of the person who read it with you.',
	'second-unfit': 'Something in this name can’t be shown. Write initials instead.',
	'second-long': 'Up to 40 characters fit. Initials are enough.',
	'no-such-reading': 'This step takes no such reading. Load the page again and put it in there.',
	'step-missing': 'Nothing was said to tick. Load the page again and tick it there.',
	'no-such-step': 'The lesson has no such step. Load the page again and tick it there.',
	// Reviewing
	'changed-meanwhile': 'The numbers changed while you were looking. Here are the new ones: look again.',
	'answered-meanwhile': 'Someone has answered this meanwhile. Here is what was said.',
	'nothing-to-clear': 'There aren’t enough numbers yet to clear anything.',
	// Requests
	'body-large': 'That is more than can be sent at once.',
	'database-away': 'The class’s records can’t be reached at the moment. Nothing saved is lost. Try again shortly.'
};

/** The sentence for an issue, or null where its words live elsewhere. */
export function refusalSays(issue: Issue, unit: Unit = 'cm'): string | null {
	const found = Object.hasOwn(says, issue.code) ? says[issue.code] : undefined;
	return found === undefined ? null : typeof found === 'string' ? found : found(issue, unit);
}
