// What stands in the way of a layout: what happened, and how to mend it.
import type { Issue } from '../../drafting/result.ts';
import type { Unit } from '../../drafting/length.ts';
import type { Says } from './length.ts';
import { long } from './long.ts';

/** Every code of the layout question's own (`cloth/question.ts`); those it shares with a draft's input are in issue.ts. */
export const layoutIssueSays: Readonly<Record<string, Says>> = {
	'no-pieces': () => 'There are no pieces to lay. Add one.',
	'too-many-pieces': ({ figures }) => `Those are ${figures?.count} pieces, and up to ${figures?.most} are laid at once. Lay them in two groups, each on its own length.`,
	'list-too-long': ({ expected }) => `Up to ${String(expected)} fit in this list. Take some out.`,
	'name-twice': ({ received }) => `“${String(received)}” is there twice. Give each piece a name of its own, and its copies as a count.`,
	'one-shape': () => 'A piece has one shape: a sector, a rectangle, a gore or an outline. Give one of them.',
	'no-such-turn': () => 'A piece needs at least one turn it may lie in, in degrees; on the fold, 0 or 180. Check its turns.',
	'crosses-itself': () => 'The outline crosses itself, so it can’t be cut from one layer. Check its corners, or take a smaller angle or a narrower strip.',
	'radius-not-wider': ({ figures }, unit) => `The outer radius has to be more than the inner one, ${long(figures?.inner, unit)}. Check both.`,
	'not-an-outline': () => 'An outline is a list of corners, three or more, that go round an area. Check its corners.',
	'outer-needs-length': () => 'How far a skirt can reach depends on how long the cloth is. Measure the cloth’s length.',
	'outer-needs-panel': () => 'The radius that is looked for is that of a sector called “panel”. Name the pieces so.',
	'nothing-usable': () => 'The places that can’t be used cover the whole cloth. Check where they lie.',
	'fold-needs-folded': () => 'A piece on the fold needs folded cloth. Fold the cloth, or lay the piece whole.',
	'wider-than-cloth': ({ figures }, unit) => `A piece is ${long(figures?.narrowest, unit)} across where it lies narrowest, and the cloth is ${long(figures?.width, unit)} wide. Take wider cloth, allow another turn, or add a seam.`,
	'longer-than-cloth': ({ figures }, unit) => `A piece needs ${long(figures?.shortest, unit)} of length, and the cloth has ${long(figures?.length, unit)}. Allow another turn, shorten the piece, or add a seam.`
};

export const layoutIssueSentence = (issue: Issue, unit: Unit): string | null =>
	(Object.hasOwn(layoutIssueSays, issue.code) ? layoutIssueSays[issue.code]!(issue, unit) : null);
