// Whether what a learner says fits her class: steps that its lesson has, and a gate that was read whole.
import { ok, refuse, type Issue, type Result } from '../drafting/result.ts';
import { askIssues } from './ask.ts';
import type { EventBody, NewEvent } from './event.ts';
import type { ClassRules } from './rules.ts';

export interface SaidIn {
	/** The ids of the steps of the class's lesson. */
	readonly steps: ReadonlySet<string>;
	/** Needed only where something asks to be cleared. */
	readonly gate: ClassRules['gate'];
}

const stepOf = (body: EventBody): string | undefined => ('step' in body ? body.step : undefined);

export const asksIn = (events: readonly NewEvent[]): boolean => events.some(({ body }) => body.kind === 'ask');

/** All issues at once, each with the place of its event before its path. */
export function checkSaid(events: readonly NewEvent[], { steps, gate }: SaidIn): Result<readonly NewEvent[]> {
	const issues = events.flatMap(({ body }, index): readonly Issue[] => {
		const at = (issue: Issue): Issue => ({ ...issue, path: `${index}.body.${issue.path}` });
		const step = stepOf(body);
		if (step !== undefined && !steps.has(step)) return [at({ code: 'no-such-step', path: 'step', received: step })];
		return body.kind === 'ask' ? askIssues(body, gate).map(at) : [];
	});
	return issues.length > 0 ? refuse(...issues) : ok(events);
}
