// A learner's choices from the draft's form. Each is open only where her class leaves it open.
import type { Choices, Unit } from '$lib/class/event.ts';
import type { ClassRules } from '$lib/class/rules.ts';
import { formatLength, parseLength } from '$lib/drafting/length.ts';
import { ok, refuse, type Issue, type Result } from '$lib/drafting/result.ts';
import type { FlaredSkirt } from '$lib/drafting/skirt.ts';

/** The shares a learner may choose from. */
export const shares = [0.25, 0.5, 0.75, 1] as const;

/** More flare than half a circle needs a second panel (the cut waist would lap itself on a full one). */
export const panelsFor = (share: number): number => (share > 0.5 ? 2 : 1);

/** What the fields hold, as text; absent where they are not shown. */
export interface Typed {
	readonly share?: string;
	readonly waistEase?: string;
	readonly bandDepth?: string;
	readonly hem?: string;
	readonly hemFinish?: string;
}

const lengths = ['waistEase', 'bandDepth', 'hem'] as const;
const opens: Readonly<Record<keyof Typed, keyof ClassRules['open']>> = {
	share: 'share', waistEase: 'waistEase', bandDepth: 'bandDepth', hem: 'hemFinish', hemFinish: 'hemFinish'
};

export const isOpen = (rules: ClassRules, key: keyof Typed): boolean => rules.open[opens[key]];

const keys = ['share', 'waistEase', 'bandDepth', 'hem', 'hemFinish'] as const;

/** A skirt as its fields show it: rounded to the ruler. */
export const shownIn = (skirt: FlaredSkirt, unit: Unit): Typed => ({
	share: String(skirt.share), hemFinish: skirt.hemFinish,
	waistEase: formatLength(skirt.waistEase, unit), bandDepth: formatLength(skirt.band.depth, unit), hem: formatLength(skirt.hem, unit)
});

/**
 * The fields that say something else than was shown. One left as it was isn't read back: 1 cm shown as 3/8 in would
 * return as 9.5 mm, and what followed the class would stay where it is.
 */
export const touched = (typed: Typed, shown: Typed): Typed =>
	Object.fromEntries(keys.flatMap((key) => (typed[key] === undefined || typed[key] === shown[key] ? [] : [[key, typed[key]]])));

/** The form says beside each field what it showed. */
export function typedFrom(form: FormData): Typed {
	const texts = (mark: string): Typed => Object.fromEntries(keys.flatMap((key) => {
		const text = form.get(`${key}${mark}`);
		return typeof text === 'string' ? [[key, text]] : [];
	}));
	return touched(texts(''), texts('-shown'));
}

/** Least and most in mm of what may be typed; what can't be drafted from them is the engine's to say. */
const limits = { waistEase: [0, 300], bandDepth: [10, 200], hem: [1, 150] } as const;

/** From the fields to choices, on top of the ones before. */
export function choicesFrom(typed: Typed, rules: ClassRules, before: Choices, unit: Unit): Result<Choices> {
	const issues: Issue[] = [];
	const choices: { -readonly [K in keyof Choices]: Choices[K] } = { ...before };
	if (typed.share !== undefined && isOpen(rules, 'share')) {
		const share = Number(typed.share);
		if (!(share >= 0.1 && share <= 2)) issues.push({ code: 'not-a-share', path: 'share', expected: [0.1, 2], received: typed.share });
		else {
			choices.share = share;
			choices.panels = panelsFor(share);
		}
	}
	if ((typed.hemFinish === 'turned' || typed.hemFinish === 'narrow') && isOpen(rules, 'hemFinish')) choices.hemFinish = typed.hemFinish;
	for (const key of lengths) {
		const text = typed[key];
		if (text === undefined || !isOpen(rules, key)) continue;
		const parsed = parseLength(text, unit, key);
		if (!parsed.ok) {
			issues.push(...parsed.issues);
			continue;
		}
		const [[least, most], given] = [limits[key], parsed.value.mm];
		if (given >= least && given <= most) choices[key] = given;
		else issues.push({ code: 'length-out-of-range', path: key, expected: 'length', received: text, figures: { least, most, given } });
	}
	return issues.length > 0 ? refuse(...issues) : ok(choices);
}

/** Which choice a way out would set, or null where it is not a learner's to choose. */
export function choiceOf(path: string): keyof Typed | null {
	const keys: Readonly<Record<string, keyof Typed>> = {
		'skirt.share': 'share', 'skirt.waistEase': 'waistEase', 'skirt.band.depth': 'bandDepth', 'skirt.hem': 'hem', 'skirt.hemFinish': 'hemFinish'
	};
	return keys[path] ?? null;
}
