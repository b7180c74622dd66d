// What asking to be cleared has to carry: every line of the class's gate, read aloud, and who read it with her.
import type { Issue } from '../drafting/result.ts';
import type { EventBody } from './event.ts';
import type { ClassRules } from './rules.ts';
import { unshown } from './unshown.ts';

export const longestSecond = 40;

/** Lines that have left the gate since she read them do no harm. */
export function askIssues({ gate, second }: Pick<Extract<EventBody, { kind: 'ask' }>, 'gate' | 'second'>, lines: ClassRules['gate']): readonly Issue[] {
	const issues: Issue[] = lines.filter(({ id }) => !gate.includes(id)).map(({ id }) => ({ code: 'gate-unread', path: `gate.${id}` }));
	// A name or initials: spaces and invisible marks alone are nobody's.
	if (!/[\p{L}\p{N}]/u.test(second)) issues.push({ code: 'second-missing', path: 'second' });
	else if (unshown.test(second)) issues.push({ code: 'second-unfit', path: 'second', received: second });
	if (second.length > longestSecond) issues.push({ code: 'second-long', path: 'second', expected: longestSecond, received: second.length });
	return issues;
}
