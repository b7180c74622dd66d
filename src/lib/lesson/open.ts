// Which choices a learner has: those her class leaves open, less those that the lesson's own words rest on.
import { seenRules, type SeenRules } from '../class/review.ts';
import type { ClassRules } from '../class/rules.ts';
import type { LessonStyle, StyleKey } from './style.ts';

export type OpenChoice = keyof ClassRules['open'];

/** What each choice decides. Panels and the zip's place go with the share, hip ease with waist ease, the hem's depth with its finish. */
const decides: Readonly<Record<OpenChoice, readonly StyleKey[]>> = {
	share: ['share', 'panels', 'zipAt'], waistEase: ['waistEase', 'hipEase'], bandDepth: ['bandDepth'], hemFinish: ['hemFinish', 'hem']
};

/** The choices that no class on this lesson can open. */
export const fixedChoices = ({ fixed }: LessonStyle): readonly OpenChoice[] =>
	(Object.keys(decides) as OpenChoice[]).filter((choice) => decides[choice].some((key) => fixed.includes(key)));

/** The class's rules as they hold on this lesson: what it fixes isn't open, whatever the rules said before. */
export function rulesOn(style: LessonStyle, rules: ClassRules): ClassRules {
	const fixed = fixedChoices(style);
	const open = Object.fromEntries(Object.entries(rules.open).map(([choice, is]) => [choice, is && !fixed.includes(choice as OpenChoice)]));
	return { ...rules, open: open as unknown as ClassRules['open'] };
}

/** The class's rules that bear on what is cut on this lesson (class/review.ts, bearingRules). */
export function bearingOn(style: LessonStyle, rules: ClassRules): SeenRules {
	const fixed: readonly string[] = fixedChoices(style).map((choice) => `open.${choice}`);
	return Object.fromEntries(Object.entries(seenRules(rules)).filter(([rule]) => !fixed.includes(rule)));
}
