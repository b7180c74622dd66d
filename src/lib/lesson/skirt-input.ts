// From what is kept to what drafting checks: the one way to a draft's input. Millimetres throughout.
import type { Choices } from '../class/event.ts';
import type { ClassRules } from '../class/rules.ts';
import type { Measurement } from '../drafting/body.ts';
import { rulesOn } from './open.ts';
import type { LessonStyle } from './style.ts';

/**
 * The lesson's style, then the class's rules, then the learner's choices where lesson and class leave them open.
 * The answer is unchecked: hand it to drafting's checkInput, which refuses a body without a waist.
 */
export function skirtInput(style: LessonStyle, rules: ClassRules, choices: Choices, measured: Partial<Record<Measurement, number>>): unknown {
	const { waist, hip, waistToHip, length } = measured;
	const { open } = rulesOn(style, rules);
	const pick = <T>(open: boolean, chosen: T | undefined, set: T): T => (open && chosen !== undefined ? chosen : set);
	return {
		unit: 'mm',
		body: { ...(waist !== undefined && { waist }), ...(hip !== undefined && { hip }), ...(waistToHip !== undefined && { waistToHip }) },
		skirt: {
			style: style.style,
			share: pick(open.share, choices.share, style.share),
			panels: pick(open.share, choices.panels, style.panels),
			zipAt: pick(open.share, choices.zipAt, style.zipAt),
			...(length !== undefined && { length }),
			waistEase: pick(open.waistEase, choices.waistEase, style.waistEase),
			hipEase: pick(open.waistEase, choices.hipEase, style.hipEase),
			band: { kind: style.band, depth: pick(open.bandDepth, choices.bandDepth, style.bandDepth), ...(style.band === 'straight' && { underlap: style.underlap }) },
			hem: pick(open.hemFinish, choices.hem, rules.allowances.hem),
			hemFinish: pick(open.hemFinish, choices.hemFinish, style.hemFinish),
			zipSeries: rules.zipSeries,
			...(style.liningShorterBy !== undefined && { lining: { shorterBy: style.liningShorterBy } }),
			allowances: { waist: rules.allowances.waist, seam: rules.allowances.seam }
		}
	};
}
