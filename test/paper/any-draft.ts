// A draft of any style, drawn by lot: what a pattern may have to be printed from.
import { checkAnyInput, draftAny, type AnyDraft } from '../../src/lib/drafting/style.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { ansurBody, anyStyle, type Random } from '../drafting/bodies.ts';

const between = (random: Random, least: number, most: number): number => least + (most - least) * random();
const one = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)]!;

/** From an input as a person writes it, mm; refused ones are drawn again. */
export function anyDraft(random: Random, style: AnyDraft['skirt']['style']): AnyDraft {
	for (;;) {
		const { waist, hip, waistToHip } = ansurBody(random);
		if (style === 'flared') {
			const drafted = draftSkirt({ waist, hip, waistToHip }, anyStyle(random, waist));
			if (drafted.ok) return drafted.value;
			continue;
		}
		const length = between(random, 400, 900);
		const zipAt = one(random, ['centreBack', 'leftSide']);
		const skirt = style === 'tiered'
			? { style, length, zipAt, tiers: 1 + Math.floor(random() * 5), band: random() < 0.5 ? { kind: 'elastic', elastic: 30, depth: 35 } : { kind: 'straight', depth: between(random, 25, 50) } }
			: { style, length, zipAt, kind: one(random, ['knife', 'box']), pleats: 4 + Math.floor(random() * 30), depth: between(random, 15, 50) };
		const input = checkAnyInput({ unit: 'mm', body: { waist, hip, waistToHip }, skirt });
		const drafted = input.ok ? draftAny(input.value.body, input.value.skirt) : input;
		if (drafted.ok) return drafted.value;
	}
}

export const STYLES = ['flared', 'tiered', 'pleated'] as const;
