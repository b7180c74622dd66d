// Bodies and skirts for property tests: seeded, so that a failure can be repeated.
import { choleskyOf, type Matrix } from './cholesky.ts';
import type { Body } from '../../src/lib/drafting/body.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';

export type Random = () => number;

/** 0…1, mulberry32: a well-known 32-bit generator in the public domain. */
export function seeded(seed: number): Random {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let t = state;
		t = Math.imul(t ^ (t >>> 15), t | 1);
		t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
		return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
	};
}

/** Mean 0, SD 1 (Box and Muller). */
const normal = (random: Random): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

function drawn(random: Random, means: readonly number[], sds: readonly number[], lower: Matrix): readonly number[] {
	const z = means.map(() => normal(random));
	return means.map((mean, i) => mean + sds[i]! * lower[i]!.reduce((sum, l, k) => sum + l * z[k]!, 0));
}

// Women, ANSUR II 2012 public release, n 1986: ln waist, ln hip, waist height, waist to hip, stature; cm.
const ansur = {
	means: [4.4488, 4.6235, 102.6, 19.22, 162.85], sds: [0.1149, 0.074, 4.94, 1.9, 6.42],
	lower: choleskyOf([
		[1, 0.807, 0.234, -0.01, 0.233],
		[0.807, 1, 0.374, 0.18, 0.382],
		[0.234, 0.374, 1, 0.379, 0.935],
		[-0.01, 0.18, 0.379, 1, 0.411],
		[0.233, 0.382, 0.935, 0.411, 1]
	])
};
// Women 18+, NHANES 2017–2020, weighted: ln waist, ln hip; cm.
const nhanes = { means: [4.5746, 4.6832], sds: [0.175, 0.1381], lower: choleskyOf([[1, 0.892], [0.892, 1]]) };

/** What a body has where everything was read once. */
export type MeasuredBody = Body & Required<Pick<Body, 'waist' | 'hip' | 'waistToHip'>>;

export function ansurBody(random: Random): MeasuredBody & { readonly waistToFloor: number } {
	const [lnWaist, lnHip, height, depth] = drawn(random, ansur.means, ansur.sds, ansur.lower);
	return { waist: 10 * Math.exp(lnWaist!), hip: 10 * Math.exp(lnHip!), waistToHip: 10 * depth!, waistToFloor: 10 * height! };
}
export function nhanesBody(random: Random): MeasuredBody {
	const [lnWaist, lnHip] = drawn(random, nhanes.means, nhanes.sds, nhanes.lower);
	return { waist: 10 * Math.exp(lnWaist!), hip: 10 * Math.exp(lnHip!), waistToHip: 150 + 100 * random() };
}

const between = (random: Random, least: number, most: number): number => least + (most - least) * random();

/** A plain half circle for hand sums: 60 cm long, a band of 4 cm, every allowance 1.5 cm. */
export const halfCircle: Skirt = {
	style: 'flared', share: 0.5, length: 600, waistEase: 10, hipEase: 20, panels: 1, panelShares: null,
	band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, closure: 'zip', hem: 15, hemFinish: 'narrow', hemFacing: 50,
	zipAt: 'centreBack', zipSeries: 'cm', lining: null, allowances: { waist: 15, seam: 15 }
};

/** Anything that may be chosen, within what checkInput takes; some of it can't be cut. */
export function anySkirt(random: Random): Skirt {
	const usual = [0.25, 1 / 3, 0.5, 0.75, 1, 1.5, 2];
	return {
		style: 'flared',
		share: random() < 0.5 ? usual[Math.floor(random() * usual.length)]! : between(random, 0.1, 2),
		length: between(random, 200, 1100),
		waistEase: between(random, 0, 40), hipEase: between(random, 0, 80),
		panels: 1 + Math.floor(random() * 12),
		band: { kind: 'straight', depth: between(random, 15, 80), underlap: random() < 0.2 ? 0 : between(random, 10, 60), sits: 'above' },
		hem: between(random, 5, 60), hemFinish: random() < 0.5 ? 'turned' : 'narrow',
		zipAt: random() < 0.5 ? 'centreBack' : 'leftSide', zipSeries: random() < 0.5 ? 'cm' : 'in', closure: 'zip', panelShares: null, hemFacing: 50,
		lining: random() < 0.5 ? null : { shorterBy: between(random, 5, 60), share: null },
		allowances: { waist: between(random, 5, 25), seam: between(random, 5, 30) },
		...(random() < 0.1 && { clothKind: 'stretch' })
	};
}

/** Every kind of flared skirt: bands, facings, pull-ons, rings, panels that differ, linings of less flare. */
export function anyStyle(random: Random, waist: number): Skirt {
	const plain = anySkirt(random);
	const sits = (['above', 'centred', 'below'] as const)[Math.floor(random() * 3)]!;
	const depth = between(random, 20, 90);
	const underlap = random() < 0.2 ? 0 : between(random, 10, 50);
	const bands: readonly Skirt['band'][] = [
		{ kind: 'straight', depth, underlap, sits },
		{ kind: 'contour', depth, underlap, sits, lower: waist + plain.waistEase + between(random, -5, 150) },
		{ kind: 'elastic', depth, underlap: 0, sits, elastic: depth - between(random, 1, 8) },
		{ kind: 'faced', depth: 0, underlap: 0, sits, facing: between(random, 30, 90) }
	];
	const band = bands[Math.floor(random() * bands.length)]!;
	const ring = random() < 0.1;
	const panels = ring ? 1 : plain.panels;
	const widths = Array.from({ length: panels }, () => between(random, 0.5, 1.5));
	const whole = widths.reduce((sum, width) => sum + width, 0);
	const uneven = random() < 0.4;
	const other = (): number => plain.length * between(random, 0.85, 1.15);
	const side = other();
	const lengths: Skirt['lengths'] = !uneven || random() < 0.2 ? undefined
		: random() < 0.3 ? { back: other() } : { front: other(), sideLeft: side, sideRight: random() < 0.5 ? side : side * between(random, 0.95, 1.05), back: other() };
	const foldedBack = random() < 0.3;
	return {
		...plain, ...(lengths && { lengths }), ...(lengths && random() < 0.3 && { riseAt: 'waist' as const }),
		...(uneven && random() < 0.4 && { waistDip: { front: random() < 0.5 ? 0 : between(random, 2, 30), back: between(random, 2, 30) } }),
		...(foldedBack && { hemCorner: 'foldedBack' as const }), band, panels, share: ring ? 1 : plain.share,
		closure: band.kind === 'elastic' || ring || random() < 0.1 ? 'none' : 'zip',
		panelShares: panels > 1 && random() < 0.4 ? widths.map((width) => width / whole) : null,
		hemFinish: (['turned', 'narrow', 'rolled', 'bound', 'faced'] as const)[Math.floor(random() * 5)]!,
		hemFacing: between(random, 30, 80),
		lining: plain.lining && { ...plain.lining, share: random() < 0.5 ? null : Math.min(2, Math.max(0.1, (ring ? 1 : plain.share) * between(random, 0.4, 1.01))) }
	};
}
