// What a skirt in gathered tiers tells back and refuses, beyond what every skirt does. Apart from the other words, so that
// only a page that shows such a skirt carries them.
import type { WayOut } from '../../drafting/check.ts';
import type { Unit } from '../../drafting/length.ts';
import type { tieredCodes } from '../../drafting/tiered/checks.ts';
import type { StyleWords } from './style.ts';
import { fine, long } from './long.ts';

export type TieredCode = (typeof tieredCodes)[number];

const times = (ratio: number | undefined): string => (Math.round((ratio ?? 0) * 100) / 100).toString();

const checks: StyleWords<TieredCode | 'stride'>['checks'] = {
	'gathers-dense': ({ severity, figures }, unit) => {
		const what = `Tier ${figures.tier} has ${times(figures.ratio)} times the cloth of its seam: ${long(figures.girth, unit)} into ${long(figures.join, unit)}`;
		return severity === 'good' ? `${what}.` : `${what}. This cloth lies well up to ${times(figures.most)} times. Gather a sample first, or gather less.`;
	},
	'tier-sum': ({ severity, figures }, unit) => severity === 'good'
		? `The tiers add up to the length below the band: ${long(figures.skirtLength, unit)}.`
		: `The tiers add up to ${long(figures.sum, unit)}, and ${long(figures.skirtLength, unit)} is needed below the band. Don’t cut; tell your teacher.`,
	'elastic-stretch': ({ severity, figures }, unit) => {
		const what = `Going over the hip, the elastic stretches to ${times(figures.stretch)} times its length of ${long(figures.elasticLength, unit)}`;
		return severity === 'good' ? `${what}.` : `${what}, and woven elastic gives about ${times(figures.most)} times. Try it over the hip before you close it, or take a zip.`;
	},
	'elastic-passes-hip': ({ severity, figures }, unit) => severity === 'good'
		? `It goes over the hip: the casing is ${long(figures.casing, unit)} round, and ${long(figures.needed, unit)} has to pass through.`
		: `The casing is ${long(figures.casing, unit)} round, and ${long(figures.needed, unit)} has to pass through. Don’t cut; tell your teacher.`,
	'hip-cannot-pass': ({ figures }, unit) => `No zip is long enough: the widest tier is ${long(figures.widest, unit)} round, and ${long(figures.hip, unit)} has to pass through.`,
	// A tier has no flare to add.
	stride: ({ severity, figures }, unit) => severity === 'good'
		? `Room to step out: ${long(figures.hemSweep, unit)} round the hem.`
		: `A long step needs about ${long(figures.needed, unit)} round a hem this long; it has ${long(figures.hemSweep, unit)}. Gather more cloth into the last tier, or leave a slit.`
};

const issues: StyleWords<TieredCode>['issues'] = {
	'tiers-do-not-add-up': ({ figures }, unit, ways) => `The tiers add up to ${long(figures?.sum, unit)}, and the length below the band is ${long(figures?.skirtLength, unit)}.${ways}`,
	'hem-deeper-than-tier': ({ figures }, unit, ways) => `The hem is deeper than the last tier: ${fine(figures?.hem, unit)} on ${fine(figures?.tierLength, unit)}.${ways}`,
	'cloth-too-narrow': ({ figures }, unit, ways) => `Between its seam allowances the cloth is only ${fine(Math.max(0, figures?.usable ?? 0), unit)} wide.${ways}`,
	'tier-too-wide': ({ figures }, unit, ways) => `Tier ${figures?.tier} would be ${long(figures?.girth, unit)} round, and more than ${long(figures?.most, unit)} can’t be handled at a table.${ways || ' Gather less in the tiers above it.'}`
};

/** Null where every skirt has the words. */
function way({ path, value }: WayOut, unit: Unit): string | null {
	const [, choice, tier] = /^skirt\.(ratios|lengths\.each)\.(\d+)$/.exec(path) ?? [];
	if (choice === 'ratios') return `Gather tier ${tier} to ${times(Number(value))} times its seam`;
	if (choice !== undefined) return `Make tier ${tier} ${long(Number(value), unit)} long`;
	if (path === 'skirt.tiers') return value === 1 ? 'Make one tier' : `Make ${value} tiers`;
	return path === 'skirt.clothWidth' ? `Take a cloth ${long(Number(value), unit)} wide or more` : null;
}

export const tieredWords: StyleWords<TieredCode | 'stride'> = { checks, issues, way };
