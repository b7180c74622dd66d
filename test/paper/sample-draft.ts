// Drafts for the drawings, by the engine itself.
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';

export interface Sample {
	readonly share?: number;
	readonly panels?: number;
	readonly waist?: number;
	readonly length?: number;
	readonly hem?: number;
	readonly seam?: number;
	readonly zipAt?: 'centreBack' | 'leftSide';
}

/** A draft, or null where it can't be cut. Waist seam = waist given; lengths mm. */
export function draftOf({ share = 0.5, panels = 1, waist = 740, length = 620, hem = 20, seam = 20, zipAt = 'centreBack' }: Sample): Draft | null {
	const drafted = draftSkirt(
		{ waist: waist - 20, hip: waist + 240, waistToHip: 200 },
		{
			style: 'flared', share, length, waistEase: 20, hipEase: 20, panels, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem, hemFinish: 'narrow',
			zipAt, zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: { shorterBy: 25, share: null }, allowances: { waist: 15, seam }
		}
	);
	return drafted.ok ? drafted.value : null;
}
export function sampleDraft(sample: Sample = {}): Draft {
	const draft = draftOf(sample);
	if (!draft) throw new Error(`can't be cut: ${JSON.stringify(sample)}`);
	return draft;
}

/** A full circle in one piece, pulled on over an elastic: its waist is a hole. */
export function ringDraft(): Draft {
	const drafted = draftSkirt({ waist: 720, hip: 980, waistToHip: 200 }, {
		style: 'flared', share: 1, length: 550, waistEase: 300, hipEase: 20, panels: 1, band: { kind: 'elastic', depth: 35, underlap: 0, sits: 'above', elastic: 30 }, hem: 15,
		hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'none', panelShares: null, hemFacing: 50, lining: null, allowances: { waist: 15, seam: 15 }
	});
	if (!drafted.ok || !drafted.value.pieces[0]?.hole) throw new Error('no ring');
	return drafted.value;
}
