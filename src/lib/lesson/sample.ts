// Invented numbers, shown with the label "sample numbers" to a reader who hasn't measured. Millimetres.
import type { Unit } from '../class/event.ts';
import type { ClassRules } from '../class/rules.ts';
import type { Measurement } from '../drafting/body.ts';
import { draftSkirt, type Draft } from '../drafting/draft.ts';
import { checkInput } from '../drafting/input.ts';
import { skirtInput } from './skirt-input.ts';
import type { LessonStyle } from './style.ts';
import { sampleTolerances } from './tolerance.ts';

export const sampleMeasured: Readonly<Record<Measurement, number>> = { waist: 740, hip: 990, waistToHip: 200, length: 600 };

/** The rules of no class: the lesson's own style with 15 mm allowances; for a reader in inches 5/8 in, and a hem in eighths. */
export function sampleRules(unit: Unit, style: LessonStyle): ClassRules {
	const allowance = unit === 'in' ? 15.875 : 15;
	const eighth = 25.4 / 8;
	const hem = unit === 'in' ? Math.round(style.hem / eighth) * eighth : style.hem;
	return {
		unit, zipSeries: unit,
		allowances: { waist: allowance, seam: allowance, hem },
		tolerances: sampleTolerances,
		open: { share: false, waistEase: false, bandDepth: false, hemFinish: false },
		gate: []
	};
}

/** The sample's draft of this lesson. A style that can't be drafted from the sample is our own bug. */
export function sampleDraft(style: LessonStyle, unit: Unit): Draft {
	const input = checkInput(skirtInput(style, sampleRules(unit, style), {}, sampleMeasured));
	const draft = input.ok ? draftSkirt(input.value.body, input.value.skirt) : input;
	if (!draft.ok) throw new Error(`The sample can't be drafted: ${JSON.stringify(draft.issues)}`);
	return draft.value;
}
