// The components a lesson may use, and their literal attributes. preprocess.js imports them by these names.
import { madeNames } from '../class/made.ts';

/** What an attribute's words must be: free words, a whole number, a length such as `5 mm` or a tolerance that the class sets, or a name from a list. */
export type AttributeKind = 'words' | 'count' | 'within' | 'id' | 'figure' | 'working' | 'drawing' | 'term' | readonly string[];

export interface Attribute {
	readonly is: AttributeKind;
	readonly optional?: true;
}

export interface Component {
	/** `block` stands between empty lines; `inline` stands in a sentence. */
	readonly where: 'block' | 'inline';
	/** Whether it goes round words or stands alone. */
	readonly holds: 'words' | 'nothing';
	readonly attributes: Readonly<Record<string, Attribute>>;
}

export const cautions = ['iron', 'steam', 'needle', 'pins', 'rotary-cutter', 'shears', 'unpicker', 'machine', 'presser-foot', 'cable'] as const;
export type CautionAbout = (typeof cautions)[number];

export const calculators = ['sector', 'band', 'opening', 'hem'] as const;
export type CalculatorOf = (typeof calculators)[number];

export const components: Readonly<Record<string, Component>> = {
	Step: {
		where: 'block', holds: 'words',
		attributes: {
			id: { is: 'id' }, title: { is: 'words' },
			/** What its tick says: `Washed`. */
			done: { is: 'words' }, minutes: { is: 'count' },
			drawing: { is: 'drawing', optional: true },
			/** Why it has no drawing. One of the two is needed. */
			undrawn: { is: 'words', optional: true },
			/** Not to be done before the teacher has cleared the numbers. */
			needs: { is: ['clearance'], optional: true },
			/** A reading on the real thing that is put in at this step (class/made.ts). */
			reads: { is: madeNames, optional: true }
		}
	},
	Right: { where: 'block', holds: 'words', attributes: { within: { is: 'within', optional: true } } },
	Slip: { where: 'block', holds: 'words', attributes: {} },
	Caution: { where: 'block', holds: 'words', attributes: { about: { is: cautions } } },
	Calculator: { where: 'block', holds: 'nothing', attributes: { of: { is: calculators } } },
	/** `yours="blank"`: the reader works her own and types what it comes to. */
	Working: { where: 'block', holds: 'nothing', attributes: { of: { is: 'working' }, yours: { is: ['blank'], optional: true } } },
	Drawing: { where: 'block', holds: 'nothing', attributes: { of: { is: 'drawing' } } },
	/** The reader's own figure, a tolerance that her class sets, or (`mm`) a length that is the same for all, in the reader's unit. */
	Figure: { where: 'inline', holds: 'nothing', attributes: { of: { is: 'figure', optional: true }, mm: { is: 'count', optional: true } } },
	Term: { where: 'inline', holds: 'words', attributes: { of: { is: 'term' } } }
};
