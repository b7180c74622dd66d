// Any tiered skirt that may be chosen, seeded; some of them can't be cut.
import type { PerTier, TieredSkirt, TierLengths } from '../../../src/lib/drafting/tiered/skirt.ts';
import type { Random } from '../bodies.ts';

const between = (random: Random, least: number, most: number): number => least + (most - least) * random();
export const pick = <T>(random: Random, of: readonly T[]): T => of[Math.floor(random() * of.length)]!;

export function anyTiered(random: Random): TieredSkirt {
	const tiers = 1 + Math.floor(random() * 6);
	const each = Array.from({ length: tiers }, () => between(random, 60, 300));
	const per = (values: readonly number[]): PerTier => Object.fromEntries(values.map((value, i) => [String(i + 1), value]));
	const lengths = pick<TierLengths>(random, [{ kind: 'equal' }, { kind: 'growing', by: between(random, 0.6, 1.8) }, { kind: 'given', each: per(each) }]);
	const depth = between(random, 15, 60);
	const band = random() < 0.4
		? { kind: 'elastic', depth, underlap: 0, elastic: between(random, 10, 60) } as const
		: { kind: 'straight', depth, underlap: random() < 0.2 ? 0 : between(random, 10, 60) } as const;
	// Now and then lengths that don't add up.
	const sum = depth + each.reduce((total, length) => total + length, 0);
	return {
		style: 'tiered', length: lengths.kind === 'given' && random() < 0.9 ? sum : between(random, 200, 1100),
		waistEase: between(random, 0, 40), hipEase: between(random, 0, 80), tiers, lengths,
		ratios: per(Array.from({ length: tiers }, (_, i) => (i === 0 && random() < 0.3 ? 1 : between(random, i === 0 ? 1 : 1.2, random() < 0.8 ? 1.9 : 3)))),
		band, hem: between(random, 5, 60), hemFinish: pick(random, ['turned', 'narrow'] as const),
		zipAt: pick(random, ['centreBack', 'leftSide'] as const), zipSeries: pick(random, ['cm', 'in'] as const),
		cloth: pick(random, ['light', 'medium', 'heavy'] as const), clothWidth: pick(random, [900, 1120, 1400, 1500, 2800]),
		allowances: { waist: between(random, 5, 25), seam: between(random, 5, 30) },
		...(random() < 0.1 && { clothKind: 'stretch' })
	};
}
