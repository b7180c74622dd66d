// The class's rules that a clearance rests on, as one speaks of them.
import type { BearingRule } from '../../class/review.ts';

const names: Readonly<Record<BearingRule, string>> = {
	zipSeries: 'the unit zips are sold in',
	'allowances.waist': 'the allowance at the waist', 'allowances.seam': 'the allowance at the seams', 'allowances.hem': 'the allowance at the hem',
	'tolerances.readings': 'how near two readings must be', 'tolerances.waistWalk': 'how near the walked waist line must be',
	'open.share': 'who chooses the flare', 'open.waistEase': 'who chooses the ease', 'open.bandDepth': 'who chooses the band’s depth', 'open.hemFinish': 'who chooses the hem'
};

export const ruleName = (rule: string): string => (Object.hasOwn(names, rule) ? names[rule as BearingRule] : 'a rule of the class');

/** “The allowance at the seams and the allowance at the hem”, to begin a sentence. */
export function ruleNames(rules: readonly string[]): string {
	const all = rules.map(ruleName);
	const text = all.length > 1 ? `${all.slice(0, -1).join(', ')} and ${all.at(-1)}` : (all[0] ?? ruleName(''));
	return text.charAt(0).toUpperCase() + text.slice(1);
}
