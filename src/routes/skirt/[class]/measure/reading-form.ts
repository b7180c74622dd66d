// What a measuring form says, checked the same way in the browser and on the server.
import type { EventBody, Route } from '$lib/class/event.ts';
import type { SkirtState } from '$lib/class/skirt-state.ts';
import { measurementOrder, type Measurement } from '$lib/drafting/body.ts';
import { parseLength } from '$lib/drafting/length.ts';
import { askAbout, checkMeasurement, type Question } from '$lib/drafting/measurement.ts';
import { agree } from '$lib/drafting/reading.ts';
import type { Issue } from '$lib/drafting/result.ts';

export const routes: readonly { readonly value: Route; readonly label: string }[] = [
	{ value: 'self', label: 'by myself' }, { value: 'home', label: 'at home' }, { value: 'partner', label: 'with a partner' },
	{ value: 'teacher', label: 'with the teacher' }, { value: 'skirt-that-fits', label: 'from a skirt that fits' }
];
const isRoute = (text: string): text is Route => routes.some(({ value }) => value === text);

/** As typed: nothing here is ever changed by a refusal. */
export interface TypedReadings {
	readonly first: string;
	readonly second: string;
	readonly route: string;
	/** What she was asked about and has kept, as typed: it is asked once. */
	readonly keep: readonly string[];
}

export type ReadReadings =
	| { readonly kind: 'taken'; readonly bodies: readonly EventBody[] }
	| { readonly kind: 'refused'; readonly issues: readonly Issue[] }
	/** Worth asking about first. */
	| { readonly kind: 'asks'; readonly asks: readonly Asked[] };

export interface Asked {
	/** The one asked about. */
	readonly field: 'first' | 'second';
	readonly typed: string;
	readonly question: Question;
}

/** What is asked about both readings in the same words is asked once, and answered for both. */
export function askedTogether(asks: readonly Asked[]): readonly (readonly Asked[])[] {
	const together = new Map<Question['code'], Asked[]>();
	for (const asked of asks) together.set(asked.question.code, [...(together.get(asked.question.code) ?? []), asked]);
	return [...together.values()];
}

export const typedReadings = (form: FormData): TypedReadings => {
	const text = (key: string): string => (typeof form.get(key) === 'string' ? String(form.get(key)) : '');
	return { first: text('first'), second: text('second'), route: text('route'), keep: form.getAll('keep').map(String) };
};

/** One reading or two. An empty second one is fine: it can be taken later. `unit` is the form's, which may not be the learner's by now. */
export function readReadings(typed: TypedReadings, measurement: Measurement, unit: 'cm' | 'in', state: SkirtState): ReadReadings {
	const issues: Issue[] = [];
	const bodies: Extract<EventBody, { kind: 'reading' }>[] = [];
	const asks: Asked[] = [];
	const route: Route = isRoute(typed.route) ? typed.route : 'self';
	const earlier = (state.readings[measurement] ?? []).map(({ mm }) => mm);
	const others = usedLengths(state);
	for (const field of ['first', 'second'] as const) {
		const text = typed[field];
		if (field === 'second' && text.trim() === '') continue;
		const length = parseLength(text, unit, field);
		if (!length.ok) {
			issues.push(...length.issues);
			continue;
		}
		const fits = checkMeasurement(measurement, length.value.mm, field, length.value.unit);
		if (!fits.ok) {
			issues.push(...fits.issues);
			continue;
		}
		bodies.push({ kind: 'reading', measurement, mm: fits.value, typed: text.trim().slice(0, 64), unit, route });
		if (!typed.keep.includes(text)) {
			const before = [...earlier, ...bodies.slice(0, -1).map(({ mm }) => mm)];
			for (const question of askAbout(measurement, fits.value, { unit: length.value.unit, earlier: before, others })) asks.push({ field, typed: text, question });
		}
	}
	if (issues.length > 0) return { kind: 'refused', issues };
	return asks.length > 0 ? { kind: 'asks', asks } : { kind: 'taken', bodies };
}

/** The other measurements as they stand: agreed, or at least the newest reading. mm */
function usedLengths(state: SkirtState): Readonly<Partial<Record<Measurement, number>>> {
	const used: Partial<Record<Measurement, number>> = {};
	for (const measurement of measurementOrder) {
		const readings = state.readings[measurement] ?? [];
		const mm = agree(readings, Infinity).used ?? readings.at(-1)?.mm;
		if (mm !== undefined) used[measurement] = mm;
	}
	return used;
}
