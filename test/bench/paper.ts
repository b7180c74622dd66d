// How long paper takes on one core: 30 hand-outs in a second and 30 full patterns in ten are the goals of targets for a class.
import { defaultGate } from '../../src/lib/class/gate.ts';
import type { Draft } from '../../src/lib/drafting/draft.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { handoutSheets } from '../../src/lib/paper/handout.ts';
import { patternSheets } from '../../src/lib/paper/pattern-sheets.ts';
import type { Sheet } from '../../src/lib/paper/sheet.ts';
import { writePdf } from '../../src/lib/server/pdf.ts';
import { ansurBody, seeded } from '../drafting/bodies.ts';
import type { Row } from './row.ts';

/** Thirty learners' half circles, lined. */
function classDrafts(): readonly Draft[] {
	const random = seeded(30);
	return Array.from({ length: 30 }, () => {
		const drafted = draftSkirt(ansurBody(random), {
			style: 'flared', share: 0.5, length: 600, waistEase: 10, hipEase: 20, panels: 1, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 15,
			hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: { shorterBy: 25, share: null }, allowances: { waist: 15, seam: 15 }
		});
		if (!drafted.ok) throw new Error(`a half circle that can't be cut: ${JSON.stringify(drafted.issues)}`);
		return drafted.value;
	});
}

const options = { paper: 'a4', unit: 'cm', code: 'HALL-3 M', date: '2026-11-25', mark: '1a2b3c4d', scale: 1, join: 'butt' } as const;
const print = (sheets: readonly Sheet[]): Promise<Uint8Array> => writePdf(sheets, { title: 'A class', lang: 'en-GB', date: new Date(0) });
async function seconds(work: () => Promise<unknown>): Promise<number> {
	const start = performance.now();
	await work();
	return (performance.now() - start) / 1000;
}

export default async (): Promise<readonly Row[]> => {
	const drafts = classDrafts();
	const handouts = (): readonly (readonly Sheet[])[] => drafts.map((draft) => handoutSheets(draft, { ...options, stages: [], gate: defaultGate, bodyFigures: false }));
	const patterns = (): readonly (readonly Sheet[])[] => drafts.map((draft) => patternSheets(draft, options));
	// Fonts are read and opened once.
	await print(handouts()[0]!);
	const each = async (all: readonly (readonly Sheet[])[]): Promise<void> => {
		for (const sheets of all) await print(sheets);
	};
	return [
		{ what: '30 hand-outs in one PDF', figure: await seconds(() => print(handouts().flat())), unit: 's', goal: '1 s or less' },
		{ what: '30 hand-outs, a PDF each', figure: await seconds(() => each(handouts())), unit: 's', goal: 'no goal set' },
		{ what: '30 full patterns in one PDF', figure: await seconds(() => print(patterns().flat())), unit: 's', goal: '10 s or less' },
		{ what: 'one full pattern, its sheets alone', figure: (await seconds(async () => patterns())) / 30, unit: 's', goal: 'no goal set' }
	];
};
