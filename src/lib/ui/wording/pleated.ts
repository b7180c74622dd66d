// What a pleated skirt tells back and refuses, beyond what every skirt does. Apart from the other words, so that only a
// page that shows such a skirt carries them.
import type { WayOut } from '../../drafting/check.ts';
import type { Unit } from '../../drafting/length.ts';
import type { pleatedCodes } from '../../drafting/pleated/checks.ts';
import { fine, long } from './long.ts';
import type { StyleWords } from './style.ts';

export type PleatedCode = (typeof pleatedCodes)[number];

const degrees = (radians: number | undefined): string => `${Math.round(((radians ?? 0) * 180) / Math.PI * 10) / 10}°`;

const checks: StyleWords<PleatedCode | 'stride'>['checks'] = {
	'pleats-overlap': ({ severity, figures }, unit) => severity === 'good'
		? `No pleat reaches under the next at the hip: ${fine(figures.depth, unit)} deep, and there is room for ${fine(figures.room, unit)}.`
		: `The pleats reach under each other at the hip: ${fine(figures.depth, unit)} deep, with room for ${fine(figures.room, unit)}. Up to ${figures.mostLayers} layers lie there.`,
	'waist-bulk': ({ severity, figures }) => {
		const what = `At the waist up to ${figures.mostLayers} layers lie on one another.`;
		if (severity === 'good') return what;
		return severity === 'note' ? `${what} Grade their allowances.` : `${what} That is bulky under a band: take shallower pleats, or ask your teacher how to lighten them.`;
	},
	'taper-steep': ({ severity, figures }) => severity === 'good'
		? `Between waist and hip the folds lean ${degrees(figures.angle)} from the grain.`
		: `Between waist and hip the folds lean ${degrees(figures.angle)} from the grain. Beyond ${degrees(figures.most)} they poke out; more pleats share the taper.`,
	'taper-shallows': ({ severity, figures }, unit) => severity === 'good'
		? `Each pleat is ${fine(figures.depthAtHip, unit)} deep at the hip and ${fine(figures.depthAtWaist, unit)} at the waist.`
		: `The waist takes more than half of each pleat: ${fine(figures.depthAtHip, unit)} deep at the hip, and ${fine(figures.depthAtWaist, unit)} at the waist.`,
	'waist-folded-true': ({ figures }, unit) => `Fold the pleats before you cut the waist edge: the hidden layers run ${fine(figures.waistStep, unit)} out of line there.`,
	// Pleats open as one steps out; they have no flare to add.
	stride: ({ severity, figures }, unit) => severity === 'good'
		? `Room to step out: ${long(figures.hemSweep, unit)} round the hem, with the pleats open.`
		: `A long step needs about ${long(figures.needed, unit)} round a hem this long; it has ${long(figures.hemSweep, unit)} with the pleats open. Fold deeper pleats, or more of them.`
};

const issues: StyleWords<PleatedCode>['issues'] = {
	'taper-eats-pleat': ({ figures }, unit, ways) => `At the waist nothing is left of the pleats: ${fine(figures?.depth, unit)} deep at the hip, and the waist is ${long(figures?.waist, unit)} on a hip of ${long(figures?.hip, unit)}.${ways}`,
	'pleat-wider-than-cloth': ({ figures }, unit, ways) => `One pleat takes ${long(figures?.repeat, unit)} of cloth, and between its seam allowances the cloth has ${long(figures?.room, unit)}.${ways}`,
	'pleats-end-above-hip': ({ figures }, unit, ways) => `The skirt ends above the hip: it is ${long(figures?.skirtLength, unit)} long below the band, and the hip lies ${long(figures?.hipDepth, unit)} down. Pleats fall from there.${ways}`,
	'pleats-need-hip': () => 'Pleats close over the hip, so the hip is needed. Measure it, level round the fullest part.',
	'pleats-need-hip-depth': () => 'Pleats taper from the waist to the hip, so the way between is needed. Measure it down the side, from the waist tape to the hip tape.'
};

/** Null where every skirt has the words. */
function way({ path, value }: WayOut, unit: Unit): string | null {
	if (path === 'skirt.pleats') return `Fold ${value} pleats`;
	if (path === 'skirt.depth') return `Fold each pleat ${fine(Number(value), unit)} deep`;
	return path === 'skirt.clothWidth' ? `Take a cloth ${long(Number(value), unit)} wide or more` : null;
}

export const pleatedWords: StyleWords<PleatedCode | 'stride'> = { checks, issues, way };
