import type { Issue } from '../../drafting/result.ts';
import type { Unit } from '../../drafting/length.ts';
import { issueSentence } from './issue.ts';

/** The sentences for one field of a form, in order. Lengths in them are in the reader's unit. */
export const sentencesAt = (issues: readonly Issue[] | undefined, path: string, unit: Unit = 'cm'): readonly string[] =>
	(issues ?? []).filter((issue) => issue.path === path).map((issue) => issueSentence(issue, unit));
