// One object of untrusted input, read field by field. Every mistake is kept as an issue; nothing throws.
import { mmPer, parseLength, type TypedUnit, type Unit } from './length.ts';
import type { Issue } from './result.ts';

/** More readings of one measurement than anybody takes. */
const mostReadings = 10;

type Range = readonly [least: number, most: number];

/** What the groups of one input share. */
export interface Within {
	readonly unit: Unit | undefined;
	readonly issues: Issue[];
}

export class Fields {
	private readonly seen = new Set<string>();

	private constructor(
		private readonly held: Readonly<Record<string, unknown>>,
		private readonly path: string,
		/** Unknown where the input’s unit was refused: then a bare number says nothing but its sign. */
		readonly unit: Unit | undefined,
		readonly issues: Issue[]
	) {}

	/** Null when it is no object of fields. */
	static of(value: unknown, path: string, unit: Unit | undefined, issues: Issue[] = []): Fields | null {
		if (typeof value !== 'object' || value === null || Array.isArray(value)) return null;
		return new Fields(value as Record<string, unknown>, path, unit, issues);
	}

	pathOf(name: string): string {
		return this.path === '' ? name : `${this.path}.${name}`;
	}

	/** Only what the object itself has: never what it inherits. */
	private take(name: string): unknown {
		this.seen.add(name);
		return Object.hasOwn(this.held, name) ? this.held[name] : undefined;
	}

	private say(name: string, code: string, expected: unknown, received: unknown, figures?: Issue['figures']): undefined {
		this.issues.push({ code, path: this.pathOf(name), expected, received: brief(received), ...(figures && { figures }) });
		return undefined;
	}

	isNull(name: string): boolean {
		return this.take(name) === null;
	}

	word<T extends string>(name: string, allowed: readonly T[], usual: T | 'required'): T | undefined {
		const value = this.take(name);
		if (value === undefined) return usual === 'required' ? this.say(name, 'field-missing', allowed, undefined) : usual;
		const word = allowed.find((one) => one === value);
		return word ?? this.say(name, 'not-one-of', allowed, value);
	}

	/** Some text of a person's own, such as a name. */
	text(name: string, most: number): string | undefined {
		const value = this.take(name);
		if (value === undefined) return this.say(name, 'field-missing', 'text', undefined);
		return typeof value === 'string' && value.length > 0 && value.length <= most ? value : this.say(name, 'not-one-of', `text of up to ${most} characters`, value);
	}

	/** Plain numbers in a list, up to 20; undefined when it is left out or null. */
	list(name: string): readonly number[] | 'refused' | undefined {
		const value = this.take(name);
		if (value === undefined || value === null) return undefined;
		if (!Array.isArray(value) || value.length > 20 || !value.every((one): one is number => typeof one === 'number' && Number.isFinite(one))) {
			this.say(name, 'not-a-list', 'a list of numbers', value);
			return 'refused';
		}
		return value;
	}

	/** Whatever the list holds, to be read one by one; null when it is left out, undefined when it is no list. */
	items(name: string): readonly unknown[] | null | undefined {
		const value = this.take(name);
		if (value === undefined) return null;
		return Array.isArray(value) ? value : this.say(name, 'not-a-list', 'a list', value);
	}

	yes(name: string, usual: boolean): boolean | undefined {
		const value = this.take(name);
		if (value === undefined) return usual;
		return typeof value === 'boolean' ? value : this.say(name, 'not-one-of', [true, false], value);
	}

	/** A plain number, no length: a share. Null may be said where it is usual. */
	number(name: string, range: Range, usual: number | 'required'): number | undefined;
	number(name: string, range: Range, usual: null): number | null | undefined;
	number(name: string, [least, most]: Range, usual: number | 'required' | null): number | null | undefined {
		const value = this.take(name);
		if (usual === null && value === null) return null;
		if (value === undefined) return usual === 'required' ? this.say(name, 'field-missing', 'number', undefined) : usual;
		if (typeof value !== 'number' || !Number.isFinite(value)) return this.say(name, 'not-a-number', 'number', value);
		return value >= least && value <= most ? value : this.say(name, 'number-out-of-range', [least, most], value, { least, most });
	}

	whole(name: string, range: Range, usual: number): number | undefined {
		const value = this.number(name, range, usual);
		return value === undefined || Number.isInteger(value) ? value : this.say(name, 'not-whole', 'whole number', value);
	}

	/** A length in mm: a number in the input's unit, or a text as a person would type it. No `usual`: it may be left out. */
	length(name: string, usual?: number | 'required', range?: Range): number | undefined {
		const value = this.take(name);
		if (value === undefined) return usual === 'required' ? this.say(name, 'field-missing', 'length', undefined) : usual;
		return this.asLength(name, value, range);
	}

	/** One length, or several readings of it in a list, the oldest first: up to ten. Undefined where any of them is refused. */
	readings(name: string, need?: 'required'): readonly number[] | undefined {
		const value = this.take(name);
		if (!Array.isArray(value)) {
			const one = this.length(name, need);
			return one === undefined ? undefined : [one];
		}
		if (value.length === 0 || value.length > mostReadings) return this.say(name, 'readings-count', [1, mostReadings], `${value.length} readings`);
		const read = value.map((one: unknown) => this.asLength(name, one));
		return read.every((one): one is number => one !== undefined) ? read : undefined;
	}

	private asLength(name: string, value: unknown, range?: Range): number | undefined {
		const unit = this.unit ?? 'mm';
		let mm: number;
		if (typeof value === 'string') {
			const parsed = parseLength(value, unit, this.pathOf(name));
			if (!parsed.ok) {
				this.issues.push(...parsed.issues);
				return undefined;
			}
			mm = parsed.value.mm;
		} else if (typeof value === 'number' && Number.isFinite(value)) {
			mm = value * mmPer[unit];
		} else return this.say(name, 'not-a-length', 'length', value);
		// Is it −0? Then it is 0: the figures shouldn't carry a sign that nobody meant.
		mm = mm === 0 ? 0 : mm;
		const [least, most] = range ?? [0, Infinity];
		if (mm < 0 && least >= 0) return this.say(name, 'length-negative', range ? [least, most] : 'length', this.unit === undefined ? value : mm);
		if (this.unit === undefined || (mm >= least && mm <= most)) return mm;
		return this.say(name, 'length-out-of-range', [least, most], mm, { least, most, given: mm });
	}

	/** The unit that a length was written in: the input's, unless its text names another. Of a list, the reading counted from 0. */
	unitOf(name: string, reading = 0): TypedUnit | undefined {
		const held = this.take(name);
		const value: unknown = Array.isArray(held) ? held[reading] : held;
		const parsed = typeof value === 'string' ? parseLength(value, this.unit ?? 'mm') : null;
		return parsed?.ok ? parsed.value.unit : this.unit;
	}

	/** A group of fields inside this one; null when it is left out, and undefined when it is refused. */
	group(name: string, within: Within, usual?: 'required'): Fields | null | undefined;
	/** Left out, it is read as `usual`. */
	group(name: string, within: Within, usual: object): Fields | undefined;
	group(name: string, { unit, issues }: Within, usual?: 'required' | object): Fields | null | undefined {
		const came = this.take(name);
		const value = came === undefined && usual !== 'required' ? usual : came;
		if (value === undefined) return usual === 'required' ? this.say(name, 'field-missing', 'object', undefined) : null;
		return Fields.of(value, this.pathOf(name), unit, issues) ?? this.say(name, 'not-an-object', 'object', value);
	}

	/** A field that nobody asked for is a mistake: a slip in its name would else be a silent default. At most 20 are named. */
	unknown(): void {
		const names = Object.keys(this.held).filter((name) => !this.seen.has(name)).slice(0, 20);
		for (const name of names) this.say(name.slice(0, 64), 'unknown-field', [...this.seen], this.held[name]);
	}
}

/** What came, short enough to print back; null when nothing did. */
export function brief(value: unknown): unknown {
	if (value === undefined) return null;
	if (typeof value === 'string') return value.slice(0, 64);
	if (typeof value === 'number') return Number.isFinite(value) ? value : String(value);
	if (Array.isArray(value)) return 'array';
	if (typeof value === 'object' && value !== null) return 'object';
	return typeof value === 'bigint' || typeof value === 'symbol' || typeof value === 'function' ? typeof value : value;
}
