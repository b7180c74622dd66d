// A reading on the real thing as a form has it, read the same way in the browser and on the server.
import type { EventBody, Unit } from '$lib/class/event.ts';
import { isMadeName, madeCounts, type MadeLength, type MadeName } from '$lib/class/made.ts';
import { parseLength } from '$lib/drafting/length.ts';
import { ok, refuse, type Issue, type Result } from '$lib/drafting/result.ts';

/** As typed: nothing here is ever changed by a refusal. */
export interface TypedMade {
	readonly reading: MadeName;
	readonly unit: Unit;
	readonly lengths: readonly string[];
	/** With the floor's readings: how high the hem is to be. */
	readonly above?: string;
}

/** Null where it isn't one of ours. */
export function typedMade(form: FormData): TypedMade | null {
	const text = (key: string): string | null => { const value = form.get(key); return typeof value === 'string' ? value : null; };
	const reading = text('reading');
	if (!isMadeName(reading)) return null;
	const above = text('above');
	return { reading, unit: text('unit') === 'in' ? 'in' : 'cm', lengths: form.getAll('length').slice(0, madeCounts[reading][1]).map(String), ...(above !== null && { above }) };
}

/** A field's own name for what stands in its way: `length.0`, `above`. */
export function readMade({ reading, unit, lengths, above }: TypedMade): Result<readonly EventBody[]> {
	const issues: Issue[] = [];
	const read = (text: string, path: string, least: number): MadeLength | null => {
		const parsed = parseLength(text, unit, path);
		if (!parsed.ok) issues.push(...parsed.issues);
		else if (parsed.value.mm < least) issues.push({ code: 'length-out-of-range', path, expected: 'length', received: text, figures: { least, most: 100_000, given: parsed.value.mm } });
		else return { mm: parsed.value.mm, typed: text.trim().slice(0, 64) };
		return null;
	};
	// An edge may touch the floor.
	const all = lengths.flatMap((text, i) => read(text, `length.${i}`, reading === 'floor' ? 0 : 1) ?? []);
	const height = above === undefined || above.trim() === '' ? [] : [read(above, 'above', 1) ?? []].flat();
	if (issues.length > 0) return refuse(...issues);
	const bodies: EventBody[] = [{ kind: 'made', reading, lengths: all, unit }];
	if (reading === 'floor') bodies.push({ kind: 'made', reading: 'hemAbove', lengths: height, unit });
	return ok(bodies);
}
