// How many drafts a second on one core, checks included. A figure to read, never a test.
import type { Body } from '../../src/lib/drafting/body.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import { walkOf } from '../../src/lib/drafting/walk.ts';
import type { Row } from './row.ts';

const skirt: Skirt = {
	style: 'flared', share: 0.5, length: 600, waistEase: 10, hipEase: 20, panels: 2, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 15,
	hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: null, allowances: { waist: 15, seam: 15 }
};

const full: Partial<Skirt> = {
	band: { kind: 'faced', depth: 0, underlap: 0, sits: 'above', facing: 60 }, hemFinish: 'faced', hem: 10, lining: { shorterBy: 25, share: null }
};

/** Every draft is of another body and another share, so that nothing can be remembered. */
function draftsPerSecond(chosen: Skirt, seconds: number, walk = false): number {
	let drafts = 0;
	let used = 0;
	const start = performance.now();
	let now = start;
	while (now - start < seconds * 1000) {
		for (let i = 0; i < 200; i++) {
			const body: Body = { waist: 600 + (drafts % 500), hip: 850 + (drafts % 450), waistToHip: 180 + (drafts % 40) };
			const draft = draftSkirt(body, { ...chosen, share: 0.3 + (drafts % 60) / 100 });
			if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
			used += draft.value.checks.length + draft.value.seams.length;
			if (walk) used += walkOf(draft.value).filter(({ lengthsAgree, notchesMeet }) => lengthsAgree && notchesMeet).length;
			drafts++;
		}
		now = performance.now();
	}
	if (used === 0) throw new Error('nothing was drafted');
	return drafts / ((now - start) / 1000);
}

export function benchDrafting(): readonly Row[] {
	draftsPerSecond(skirt, 0.5);
	return [
		{ what: 'drafts with checks, two panels', figure: Math.round(draftsPerSecond(skirt, 2)), unit: 'a second', goal: '20,000 or more' },
		{ what: 'the same, lined', figure: Math.round(draftsPerSecond({ ...skirt, lining: { shorterBy: 25, share: null } }, 2)), unit: 'a second', goal: '5,000 or more' },
		{ what: 'lined, waist and hem faced, and every seam walked', figure: Math.round(draftsPerSecond({ ...skirt, ...full }, 2, true)), unit: 'a second', goal: '5,000 or more' },
		{ what: 'twelve panels, lined', figure: Math.round(draftsPerSecond({ ...skirt, panels: 12, lining: { shorterBy: 25, share: null } }, 2)), unit: 'a second', goal: '5,000 or more' }
	];
}

export default benchDrafting;
