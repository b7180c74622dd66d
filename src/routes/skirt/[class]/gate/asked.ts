// What the gate's form says, checked the same way in the browser and on the server.
import type { EventBody } from '$lib/class/event.ts';
import type { ClassRules } from '$lib/class/rules.ts';
import { ok, refuse, type Issue, type Result } from '$lib/drafting/result.ts';

/** Every item is read aloud, and a second person named: her name or initials, up to 40 characters. */
export function askOf(form: FormData, gate: ClassRules['gate']): Result<EventBody> {
	const read = form.getAll('gate').map(String);
	const second = String(form.get('second') ?? '').trim();
	const issues: Issue[] = gate.filter(({ id }) => !read.includes(id)).map(({ id }) => ({ code: 'gate-unread', path: `gate.${id}` }));
	if (second === '') issues.push({ code: 'second-missing', path: 'second' });
	if (second.length > 40) issues.push({ code: 'second-long', path: 'second', expected: 40, received: second.length });
	return issues.length > 0 ? refuse(...issues) : ok({ kind: 'ask', gate: gate.map(({ id }) => id), second });
}

export const gateSays: Readonly<Record<string, string>> = {
	'gate-unread': 'Read this line aloud and see that it is true, then tick it.',
	'second-missing': 'Write the name or initials of the person who read it with you.',
	'second-long': 'Up to 40 characters fit. Initials are enough.'
};
