// What the gate's form says, checked the same way in the browser and on the server.
import { askIssues } from '$lib/class/ask.ts';
import type { EventBody } from '$lib/class/event.ts';
import type { ClassRules } from '$lib/class/rules.ts';
import { ok, refuse, type Result } from '$lib/drafting/result.ts';

/** Every item is read aloud, and a second person named: her name or initials, up to 40 characters. */
export function askOf(form: FormData, gate: ClassRules['gate']): Result<EventBody> {
	const read = form.getAll('gate').map(String);
	const second = String(form.get('second') ?? '').trim();
	const issues = askIssues({ gate: read, second }, gate);
	return issues.length > 0 ? refuse(...issues) : ok({ kind: 'ask', gate: gate.map(({ id }) => id), second });
}
