// What a lesson's skirt is, from the lesson's frontmatter: lengths in mm. The class and the learner may change some.
import type { Issue, Result } from '../drafting/result.ts';
import type { HemFinish, ZipAt } from '../drafting/skirt.ts';

export interface LessonStyle {
	readonly style: 'flared';
	readonly share: number;
	readonly panels: number;
	readonly waistEase: number;
	readonly hipEase: number;
	readonly bandDepth: number;
	readonly underlap: number;
	/** The hem's whole allowance, where the class sets none. */
	readonly hem: number;
	readonly hemFinish: HemFinish;
	readonly zipAt: ZipAt;
	/** `elastic`: a casing, and no zip; the skirt is pulled on. */
	readonly band: 'straight' | 'elastic';
	/** Absent: no lining. */
	readonly liningShorterBy?: number;
	/** Which of these the lesson's words rest on: no class can open them. */
	readonly fixed: readonly StyleKey[];
	/** The least allowances, mm, that the lesson's steps can be sewn with. */
	readonly least: { readonly waist: number; readonly seam: number; readonly hem: number };
}

const numbers = ['share', 'panels', 'waistEase', 'hipEase', 'bandDepth', 'underlap', 'hem', 'liningShorterBy'] as const;
const words = { style: ['flared'], hemFinish: ['turned', 'narrow'], zipAt: ['centreBack', 'leftSide'], band: ['straight', 'elastic'] } as const;
/** What most lessons leave out. */
const usual: Readonly<Record<string, string>> = { band: 'straight' };
const leasts = { waist: 'leastWaist', seam: 'leastSeam', hem: 'leastHem' } as const;
export type StyleKey = (typeof numbers)[number] | keyof typeof words;
const choosable: readonly string[] = [...numbers, ...Object.keys(words)];
export const styleKeys: readonly string[] = [...choosable, 'fixed', ...Object.values(leasts)];

export function readStyle(front: Readonly<Record<string, string>>, file = ''): Result<LessonStyle> {
	const issues: Issue[] = [];
	const style: Record<string, unknown> = {};
	const number = (key: string): number | undefined => {
		const text = front[key];
		if (text !== undefined && /^[0-9]+(\.[0-9]+)?$/.test(text)) return Number(text);
		issues.push({ code: 'front-value', path: `${file}:1`, expected: `${key}: a number`, received: text });
		return undefined;
	};
	for (const key of numbers) if (key in front || key !== 'liningShorterBy') style[key] = number(key);
	// Left out, nothing is fixed and any allowance will do.
	style.least = Object.fromEntries(Object.entries(leasts).map(([at, key]) => [at, key in front ? number(key) : 0]));
	const fixed = front.fixed?.split(',').map((key) => key.trim()) ?? [];
	for (const key of fixed) if (!choosable.includes(key)) issues.push({ code: 'front-value', path: `${file}:1`, expected: choosable, received: key });
	style.fixed = fixed;
	for (const [key, allowed] of Object.entries(words)) {
		const text = front[key] ?? usual[key] ?? '';
		if ((allowed as readonly string[]).includes(text)) style[key] = text;
		else issues.push({ code: 'front-value', path: `${file}:1`, expected: allowed, received: text });
	}
	return issues.length ? { ok: false, issues } : { ok: true, value: style as unknown as LessonStyle };
}
