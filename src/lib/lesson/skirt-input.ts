// From what is kept to what drafting checks: the one way to a draft's input. Millimetres throughout.
import type { Choices } from '../class/event.ts';
import type { ClassRules } from '../class/rules.ts';
import type { Measurement } from '../drafting/body.ts';
import type { LessonStyle } from './style.ts';

/**
 * The lesson's style, then the class's rules, then the learner's choices where her class leaves them open. Panels and
 * the zip's place go with the share, hip ease with waist ease, the hem's depth with its finish.
 * The answer is unchecked: hand it to drafting's checkInput, which refuses a body without a waist.
 */
export function skirtInput(style: LessonStyle, rules: ClassRules, choices: Choices, measured: Partial<Record<Measurement, number>>): unknown {
	const { waist, hip, waistToHip, length } = measured;
	const pick = <T>(open: boolean, chosen: T | undefined, set: T): T => (open && chosen !== undefined ? chosen : set);
	return {
		unit: 'mm',
		body: { ...(waist !== undefined && { waist }), ...(hip !== undefined && { hip }), ...(waistToHip !== undefined && { waistToHip }) },
		skirt: {
			style: style.style,
			share: pick(rules.open.share, choices.share, style.share),
			panels: pick(rules.open.share, choices.panels, style.panels),
			zipAt: pick(rules.open.share, choices.zipAt, style.zipAt),
			...(length !== undefined && { length }),
			waistEase: pick(rules.open.waistEase, choices.waistEase, style.waistEase),
			hipEase: pick(rules.open.waistEase, choices.hipEase, style.hipEase),
			band: { kind: 'straight', depth: pick(rules.open.bandDepth, choices.bandDepth, style.bandDepth), underlap: style.underlap },
			hem: pick(rules.open.hemFinish, choices.hem, rules.allowances.hem),
			hemFinish: pick(rules.open.hemFinish, choices.hemFinish, style.hemFinish),
			zipSeries: rules.zipSeries,
			...(style.liningShorterBy !== undefined && { lining: { shorterBy: style.liningShorterBy } }),
			allowances: { waist: rules.allowances.waist, seam: rules.allowances.seam }
		}
	};
}
