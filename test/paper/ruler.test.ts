import { expect, test } from 'vitest';
import type { Graduation } from '../../src/lib/drafting/ruler.ts';
import { rulerDrawing } from '../../src/lib/paper/diagrams/ruler.ts';
import { meets } from '../../src/lib/paper/label-place.ts';
import { linePath } from '../../src/lib/paper/diagrams/shape.ts';
import { layRuler } from '../../src/lib/paper/ruler-ticks.ts';
import { layOut } from '../../src/lib/paper/screen.ts';
import { textWidth, voiceSize } from '../../src/lib/paper/voice.ts';

const all: readonly Graduation[] = ['mm', 'halfCm', 'eighth', 'sixteenth'];
const read = (mm: number, graduation: Graduation): readonly string[] => layOut(rulerDrawing(mm, graduation)).words.map(({ text }) => text);

test('The mark is written as the ruler reads', () => {
	expect(read(223.3, 'mm')).toContain('22.3 cm');
	expect(read(223.3, 'halfCm')).toContain('22.5 cm');
	// 223.3 mm is 8.791 in: 8 3/4 to an eighth, 8 13/16 to a sixteenth (8.791 × 16 = 140.7).
	expect(read(223.3, 'eighth')).toContain('8 3/4 in');
	expect(read(223.3, 'sixteenth')).toContain('8 13/16 in');
	expect(read(4, 'mm')).toContain('0.4 cm');
	expect(read(9.55 * 25.4, 'sixteenth')).toContain('9 9/16 in');
	expect(read(26.05 * 25.4, 'eighth')).toContain('26 in');
});

test('Its ticks are the ruler’s own: as many between two numbers as it is divided into', () => {
	const per: Readonly<Record<Graduation, number>> = { mm: 10, halfCm: 2, eighth: 8, sixteenth: 16 };
	for (const graduation of all) {
		const shapes = rulerDrawing(223.3, graduation).shapes;
		const at = shapes.flatMap((shape) => (shape.shape === 'path' && shape.line === 'measure' ? [shape.path.start[0]] : []));
		const numbers = shapes.flatMap((shape) => (shape.shape === 'text' && shape.voice === 'label' && /^\d+$/.test(shape.text) ? [shape.at[0]] : [])).sort((a, b) => a - b);
		const [first, second] = numbers as [number, number];
		expect([graduation, at.filter((x) => x > first + 1e-6 && x < second + 1e-6).length]).toEqual([graduation, per[graduation]]);
		// Told apart on a phone: look.md's ticks are a little over 1 px wide.
		expect(Math.min(...at.slice(1).map((x, i) => x - at[i]!))).toBeGreaterThan(4);
	}
});

test('The mark stands on a tick of its own, and the dot where the length was worked out', () => {
	const { shapes, alt } = rulerDrawing(222.82, 'halfCm');
	const marked = shapes.find((shape) => shape.shape === 'path' && shape.now);
	const dot = shapes.find((shape) => shape.shape === 'mark' && shape.mark === 'dot');
	if (marked?.shape !== 'path' || dot?.shape !== 'mark') throw new Error('no mark');
	expect(shapes.some((shape) => shape.shape === 'path' && shape.line === 'measure' && Math.abs(shape.path.start[0] - marked.path.start[0]) < 1e-9)).toBe(true);
	// 225 − 222.82 = 2.18 mm at 340 units to 100 mm.
	expect(marked.path.start[0] - dot.at[0]).toBeCloseTo(2.18 * 3.4, 6);
	expect(alt).toBe('22.5 cm on a ruler divided to half a centimetre. It was worked out 2.2 mm less.');
	expect(rulerDrawing(220, 'mm').alt).toBe('22.0 cm on a ruler divided to the millimetre.');
});

test('No word lies on another or leaves the sheet, for any length on any ruler', () => {
	for (const graduation of all) for (let mm = 0; mm < 1500; mm += 7.31) for (const width of [288, 358, 700]) {
		const screen = layOut(rulerDrawing(mm, graduation), width);
		const wrong = screen.words.flatMap(({ text, discs }, i) => [
			...(discs.some(({ x, y, r }) => x - r < -2 || x + r > screen.width + 2 || y - r < -2 || y + r > screen.height + 2) ? [`${text} leaves`] : []),
			...screen.words.slice(i + 1).filter((other) => meets(discs, other.discs)).map((other) => `${text} on ${other.text}`)
		]);
		expect([graduation, mm, ...wrong]).toEqual([graduation, mm]);
	}
});

test('The numbers on a tape touch neither its ticks nor its edges, whichever way it lies', () => {
	for (const unit of ['cm', 'in'] as const) for (const [wide, high] of [[0, -250], [0, 250], [250, 0], [30, -190], [200, -150]] as const) for (const per of [1, 2.4, 3.6, 5]) {
		const path = linePath([100, 300], [100 + wide, 300 + high]);
		for (const width of [288, 358, 700]) {
			const { texts, ticks, body } = layRuler({ shape: 'ruler', along: path, starts: 0, unit, body: 'tape', per, marks: [] }, path, 1, width);
			const edges = body!.edges.map(({ end }, i) => [i === 0 ? body!.start : body!.edges[i - 1]!.end, end] as const);
			expect(texts.length).toBeGreaterThan(2);
			for (const { at: [x, y], text, voice } of texts) {
				// A box round the figures, a little less than 1 px from their ink.
				const half = textWidth(text, voice, width) / 2 + 0.8;
				const up = voiceSize(voice, width) * 0.34;
				const inside = ([px, py]: readonly [number, number]) => Math.abs(px - x) < half && Math.abs(py - (y - up)) < up + 0.8;
				for (const [from, to] of [...ticks, ...edges]) {
					const hits = Array.from({ length: 201 }, (_, i) => i / 200).filter((t) => inside([from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]));
					expect([unit, wide, high, per, width, text, hits.length]).toEqual([unit, wide, high, per, width, text, 0]);
				}
			}
		}
	}
});

test('A stretch of ruler is plain data that survives JSON', () => {
	for (const graduation of all) expect(JSON.parse(JSON.stringify(rulerDrawing(412.3, graduation)))).toEqual(rulerDrawing(412.3, graduation));
});
