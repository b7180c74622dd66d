// A drawing for every way back: words apart and on the sheet, every number said, and the lines that it is about.
import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../../src/lib/drafting/draft.ts';
import { optionCodes, type OptionCode } from '../../../src/lib/drafting/made/option.ts';
import type { AsMade } from '../../../src/lib/drafting/made/reading.ts';
import { rescueCodes } from '../../../src/lib/drafting/made/rescue-code.ts';
import { rescue } from '../../../src/lib/drafting/made/rescue.ts';
import { rescueDrawing } from '../../../src/lib/paper/diagrams/rescue/rescue.ts';
import { meets } from '../../../src/lib/paper/label-place.ts';
import { layOut, type Screen } from '../../../src/lib/paper/screen.ts';
import { ansurBody, anySkirt, nhanesBody, seeded } from '../bodies.ts';
import { draftOf } from './sample.ts';
import { wrong } from './wrong.ts';

/** Words of a screen that lie on each other or leave its frame. */
function clashes({ words, width, height }: Screen): string[] {
	return words.flatMap((a, i) => [
		...(a.discs.some((d) => d.x - d.r < -2 || d.x + d.r > width + 2 || d.y - d.r < -2 || d.y + d.r > height + 2) ? [`${a.text} leaves the frame`] : []),
		...words.slice(i + 1).filter((b) => meets(a.discs, b.discs)).map((b) => `${a.text} on ${b.text}`)
	]);
}

const half = draftOf({ waistEase: 20 }, { waist: 700, hip: 980, waistToHip: 200 });

test('Each way’s drawing keeps its words apart on any screen, and says every large figure', () => {
	const random = seeded(11);
	const met = new Set<OptionCode>();
	const found = new Set<string>();
	for (let i = 0; i < 120; i++) {
		const drafted = draftSkirt(i % 2 ? ansurBody(random) : nhanesBody(random), { ...anySkirt(random), lining: { shorterBy: 15 + 30 * random(), share: null } });
		if (!drafted.ok) continue;
		const draft: Draft = drafted.value;
		for (const code of rescueCodes) {
			const readings: AsMade = wrong(code, draft, random);
			const result = rescue(code, draft, readings);
			if (!result.ok) continue;
			for (const option of result.value.options) {
				met.add(option.code);
				for (const unit of ['cm', 'in'] as const) {
					const drawing = rescueDrawing({ draft, readings, found: result.value, option, unit });
					if (/NaN|undefined|Infinity/.test(JSON.stringify(drawing)) || drawing.alt.length < 40) throw new Error(`${code} ${option.code}: ${drawing.alt}`);
					for (const width of [288, 358, 490, 700]) for (const clash of clashes(layOut(drawing, width))) found.add(`${option.code}, ${width}, ${unit}: ${clash.replace(/[\d./]+/g, '#')}`);
					for (const shape of drawing.shapes) {
						if (shape.shape === 'text' && shape.voice === 'figure' && !drawing.alt.includes(shape.text.replace(/ (cm|in|mm)$/, ''))) found.add(`${option.code} doesn’t say ${shape.text}`);
					}
				}
			}
		}
	}
	expect([...found].slice(0, 40)).toEqual([]);
	expect(optionCodes.filter((code) => !met.has(code))).toEqual([]);
});

/** The drawing of one way on the half circle with 20 mm of ease. */
function drawn(code: (typeof rescueCodes)[number], way: OptionCode, readings: AsMade) {
	const result = rescue(code, half, readings);
	if (!result.ok) throw new Error(JSON.stringify(result.issues));
	const option = result.value.options.find((one) => one.code === way)!;
	const drawing = rescueDrawing({ draft: half, readings, found: result.value, option, unit: 'cm' });
	return { ...drawing, lines: drawing.shapes.flatMap((shape) => (shape.shape === 'path' && shape.line ? [shape.now ? `${shape.line}, now` : shape.line] : [])) };
}

test('A waist sewn deeper shows the line as it was, the new one, and the edge that is left alone', () => {
	// 10/π = 3.18, so 18.18 from the edge: 3 and 18 mm to the half millimetre.
	const { alt, lines } = drawn('waist-cut-small', 'sew-deeper', { waistSeamAfterSewing: 710 });
	expect(alt).toBe('The waist edge stays as it is cut. Sew 18 mm from it, in place of 15 mm: 3 mm deeper.');
	expect(lines).toEqual(expect.arrayContaining(['cut', 'asItWas', 'stitch, now']));
});

test('A hem that dips says how much comes off at each place, in order round the waist', () => {
	const floor = [300, 296, 282, 294, 299, 295, 283, 297].map((distance, i) => ({ place: i / 8, distance }));
	const { alt, lines } = drawn('hem-dips', 'level-lowest', { floor: [...floor].reverse() });
	expect(alt).toBe('The hem dips by 18 mm. Fold it 31.5 cm above the floor, cut it at 30.0, 15 mm below the fold. From centre front round to the left, cut off: 0, 4 mm, 18 mm, 6 mm, 1 mm, 5 mm, 17 mm, 3 mm.');
	expect(lines).toEqual(expect.arrayContaining(['cut, now', 'fold', 'asItWas']));
});

test('A drawing is plain data that survives JSON', () => {
	for (const code of rescueCodes) {
		const readings = wrong(code, half, seeded(3));
		const result = rescue(code, half, readings);
		if (!result.ok) throw new Error(JSON.stringify(result.issues));
		for (const option of result.value.options) {
			const drawing = rescueDrawing({ draft: half, readings, found: result.value, option, unit: 'in' });
			expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
		}
	}
});
