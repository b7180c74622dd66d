// A skirt to make things go wrong on: the waist seam is the waist, the hip needs no ease.
import type { Body } from '../../../src/lib/drafting/body.ts';
import { draftSkirt, type Draft } from '../../../src/lib/drafting/draft.ts';
import type { Skirt } from '../../../src/lib/drafting/skirt.ts';

export const skirtOf = (choices: Partial<Skirt> = {}): Skirt => ({
	style: 'flared', share: 0.5, length: 640, waistEase: 0, hipEase: 20, panels: 1, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 15,
	hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: { shorterBy: 25, share: null }, allowances: { waist: 15, seam: 15 }, ...choices
});
export function draftOf(choices: Partial<Skirt> = {}, body: Body = { waist: 700, hip: 960, waistToHip: 200 }): Draft {
	const draft = draftSkirt(body, skirtOf(choices));
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
