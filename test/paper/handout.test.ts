import { describe, expect, it } from 'vitest';
import { defaultGate } from '../../src/lib/class/gate.ts';
import type { StageList } from '../../src/lib/lesson/lesson.ts';
import { handoutSheets, type HandoutOptions } from '../../src/lib/paper/handout.ts';
import { textLength } from '../../src/lib/paper/letter.ts';
import { MARGIN, type Item, type Sheet, type TextItem } from '../../src/lib/paper/sheet.ts';
import { seeded } from '../drafting/bodies.ts';
import { draftOf, sampleDraft, type Sample } from './sample-draft.ts';

const step = (id: string, title: string) => ({ id, title, done: 'Done', minutes: 5 });
const stages: StageList = [
	{ id: 'mark', title: 'Mark, check and cut', minutes: 105, steps: Array.from({ length: 11 }, (_, i) => step(`m${i}`, `Draw line ${i + 1} of the skirt`)) },
	{ id: 'hang', title: 'Hang and level', minutes: 65, waits: 24, steps: [step('hang', 'Hang the skirt for a day'), step('level', 'Mark the hem from the floor')] }
];
const options: HandoutOptions = { paper: 'a4', unit: 'cm', code: 'HALL-3 M', date: '2026-11-25', stages, gate: defaultGate, bodyFigures: false };

const textsOf = (sheet: Sheet): readonly TextItem[] => sheet.items.filter((item): item is TextItem => item.item === 'text');
const all = (sheets: readonly Sheet[]): readonly string[] => sheets.flatMap((sheet) => textsOf(sheet).map(({ text }) => text));
type Box = readonly [x0: number, y0: number, x1: number, y1: number];

/** The room of an upright text, a little smaller than its letters so that only a real clash counts. */
function boxOf({ at, text, face, size, anchor }: TextItem): Box {
	const length = textLength(text, face, size);
	const x = at[0] - (anchor === 'end' ? length : anchor === 'middle' ? length / 2 : 0);
	return [x + 0.2, at[1], x + length - 0.2, at[1] + size * 0.24];
}
const isUpright = (item: Item): item is TextItem => item.item === 'text' && !item.angle;

function clashes(sheet: Sheet): string[] {
	const found: string[] = [];
	const words = sheet.items.filter(isUpright).map((item) => ({ text: item.text, box: boxOf(item) }));
	for (const [i, a] of words.entries()) {
		const [x0, y0, x1, y1] = a.box;
		if (x0 < MARGIN || y0 < MARGIN || x1 > sheet.width - MARGIN || y1 > sheet.height - MARGIN) found.push(`${sheet.name}: ${a.text} leaves the sheet`);
		for (const b of words.slice(i + 1)) if (x0 < b.box[2] && b.box[0] < x1 && y0 < b.box[3] && b.box[1] < y1) found.push(`${sheet.name}: ${a.text} on ${b.text}`);
	}
	return found;
}

function randomSamples(seed: number, count: number): readonly Sample[] {
	const random = seeded(seed);
	const samples: Sample[] = [];
	while (samples.length < count) {
		const sample: Sample = {
			share: [0.25, 1 / 3, 0.42, 0.5, 0.75, 1, 1.5][Math.floor(random() * 7)]!, panels: 1 + Math.floor(random() * 8), waist: 520 + random() * 800,
			length: 350 + random() * 700, hem: 10 + random() * 30, seam: 10 + random() * 10, zipAt: random() < 0.3 ? 'leftSide' : 'centreBack'
		};
		if (draftOf(sample)) samples.push(sample);
	}
	return samples;
}

describe('the hand-out', () => {
	it('keeps every word off every other and on its sheet, for drafts drawn by lot, both papers and both units', () => {
		for (const sample of [{}, { share: 0.1, panels: 2, length: 800 }, ...randomSamples(11, 20)]) {
			for (const paper of ['a4', 'letter'] as const) {
				for (const unit of ['cm', 'in'] as const) {
					const sheets = handoutSheets(sampleDraft(sample), { ...options, paper, unit, bodyFigures: true });
					expect(sheets.flatMap(clashes), JSON.stringify(sample)).toEqual([]);
				}
			}
		}
	});
	it('goes on to further sheets when a class has a long gate and a lesson many steps, and loses none of them', () => {
		const gate = Array.from({ length: 20 }, (_, i) => ({ id: `g${i}`, says: `Item ${i + 1}: ${'the second person reads this aloud while the first one points at the cloth. '.repeat(3)}`.slice(0, 200).trim() }));
		const long: StageList = [{ id: 'long', title: 'A long stage', minutes: 600, steps: Array.from({ length: 130 }, (_, i) => step(`s${i}`, `Step number ${i + 1}`)) }];
		const sheets = handoutSheets(sampleDraft(), { ...options, gate, stages: long });
		expect(sheets.flatMap(clashes)).toEqual([]);
		const texts = all(sheets);
		for (let i = 1; i <= 130; i++) expect(texts).toContain(`Step number ${i}`);
		for (let i = 1; i <= 20; i++) expect(texts.some((text) => text.startsWith(`Item ${i}:`))).toBe(true);
	});
	it('holds the three tables whole: every mark of each, numbered from 1', () => {
		const sheets = handoutSheets(sampleDraft(), options);
		const texts = all(sheets);
		for (const title of ['Waist stitch line 23.6', 'Waist cut line 22.1', 'Hem cut line 83.6']) expect(texts).toContain(title);
		// The hem of 836 mm needs steps under 2·arccos(1 − 0.5/836), so 24 of them to a quarter turn and its allowance: 25 marks.
		expect(texts.filter((text) => text === '25')).not.toHaveLength(0);
		expect(Math.ceil((Math.PI / 2 + Math.asin(20 / 835.5)) / (2 * Math.acos(1 - 0.5 / 835.5)))).toBe(24);
	});
	it('prints readings only if they are chosen', () => {
		const reading = (texts: readonly string[]) => texts.filter((text) => /, read$/.test(text));
		expect(reading(all(handoutSheets(sampleDraft(), options)))).toEqual([]);
		expect(reading(all(handoutSheets(sampleDraft(), { ...options, bodyFigures: true })))).toEqual(['waist, read', 'hip, read', 'waist to hip, read']);
	});
	it('has a tick box for every item of the gate and every step', () => {
		const boxes = handoutSheets(sampleDraft(), options).flatMap(({ items }) => items.filter((item) => item.item === 'path' && item.closed && item.pen === 'sewn' && item.fill === undefined));
		expect(boxes).toHaveLength(defaultGate.length + 13);
	});
	it('says what is cut and walked in the learner’s unit, and where the corner lies', () => {
		const half = all(handoutSheets(sampleDraft(), options)).join(' ');
		expect(half).toContain('2.0 from the end of the cloth');
		// Half of 740 mm on the fold.
		expect(half).toContain('37.0 from fold to back');
		// Three quarters on the fold reach back past the corner by R·sin 45° + the allowance's part of it (circle geometry).
		const up = all(handoutSheets(sampleDraft({ share: 0.75 }), options)).join(' ');
		const f = sampleDraft({ share: 0.75 }).figures;
		const above = -f.cutHemRadius * Math.cos((3 * Math.PI) / 4 + Math.asin(20 / f.cutHemRadius));
		expect(up).toContain(`${(above / 10).toFixed(1)} or more from the end`);
	});
	it('is drawn at a stated scale, 1 : 10 where there is room', () => {
		const sheets = handoutSheets(sampleDraft(), options);
		expect(all(sheets)).toContain('drawn at 1 : 10');
		// The hem's cut arc on paper has a tenth of its radius, to the screen layout's tenth of a pixel (0.03 mm).
		const arcs = sheets[0]!.items.flatMap((item) => (item.item === 'path' && item.pen === 'cut' && item.path.edges[0]?.centre ? [item.path] : []));
		const radii = arcs.map(({ start, edges }) => Math.hypot(start[0] - edges[0]!.centre![0], start[1] - edges[0]!.centre![1]));
		expect(Math.max(...radii)).toBeCloseTo(sampleDraft().figures.cutHemRadius / 10, 1);
	});
	it('is plain data that survives JSON', () => {
		const sheets = handoutSheets(sampleDraft(), options);
		expect(JSON.parse(JSON.stringify(sheets))).toEqual(sheets);
	});
});
