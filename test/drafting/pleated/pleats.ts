// Any pleated skirt that may be chosen, seeded; some of them can't be cut or folded.
import type { PleatedSkirt } from '../../../src/lib/drafting/pleated/skirt.ts';
import type { Random } from '../bodies.ts';

const between = (random: Random, least: number, most: number): number => least + (most - least) * random();
const pick = <T>(random: Random, of: readonly T[]): T => of[Math.floor(random() * of.length)]!;

export function anyPleated(random: Random): PleatedSkirt {
	return {
		style: 'pleated', kind: pick(random, ['knife', 'box'] as const), length: between(random, 260, 1100), waistEase: random() < 0.1 ? between(random, 100, 300) : between(random, 0, 40),
		hipEase: random() < 0.1 ? between(random, -40, 0) : between(random, 0, 120), pleats: 4 + Math.floor(57 * random()), depth: random() < 0.2 ? between(random, 5, 12) : between(random, 12, 70),
		stitchedTo: pick(random, ['hip', 'waist'] as const), band: { kind: 'straight', depth: between(random, 15, 80), underlap: random() < 0.2 ? 0 : between(random, 10, 60) },
		hem: between(random, 5, 60), hemFinish: pick(random, ['turned', 'narrow'] as const), zipAt: pick(random, ['centreBack', 'leftSide'] as const),
		zipSeries: pick(random, ['cm', 'in'] as const), clothWidth: pick(random, [900, 1120, 1400, 1500, 2800]), allowances: { waist: between(random, 5, 25), seam: between(random, 5, 30) },
		...(random() < 0.1 && { clothKind: 'stretch' })
	};
}
