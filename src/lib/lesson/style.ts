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
	/** Absent: no lining. */
	readonly liningShorterBy?: number;
}

const numbers = ['share', 'panels', 'waistEase', 'hipEase', 'bandDepth', 'underlap', 'hem', 'liningShorterBy'] as const;
const words = { style: ['flared'], hemFinish: ['turned', 'narrow'], zipAt: ['centreBack', 'leftSide'] } as const;
export const styleKeys: readonly string[] = [...numbers, ...Object.keys(words)];

export function readStyle(front: Readonly<Record<string, string>>, file = ''): Result<LessonStyle> {
	const issues: Issue[] = [];
	const style: Record<string, number | string> = {};
	for (const key of numbers) {
		const text = front[key];
		if (text === undefined && key === 'liningShorterBy') continue;
		if (text !== undefined && /^[0-9]+(\.[0-9]+)?$/.test(text)) style[key] = Number(text);
		else issues.push({ code: 'front-value', path: `${file}:1`, expected: `${key}: a number`, received: text });
	}
	for (const [key, allowed] of Object.entries(words)) {
		const text = front[key] ?? '';
		if ((allowed as readonly string[]).includes(text)) style[key] = text;
		else issues.push({ code: 'front-value', path: `${file}:1`, expected: allowed, received: text });
	}
	return issues.length ? { ok: false, issues } : { ok: true, value: style as unknown as LessonStyle };
}
