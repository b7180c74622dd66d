// The pattern of a skirt whose edges are smooth curves of many arcs, and whose hem corners are folded back.
import { expect, test } from 'vitest';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { stretches } from '../../src/lib/drafting/geometry/measure.ts';
import { distance } from '../../src/lib/drafting/geometry/point.ts';
import { pointAlongRun, runOf } from '../../src/lib/drafting/geometry/run.ts';
import { patternDrawing } from '../../src/lib/paper/pattern.ts';
import { notchShapes } from '../../src/lib/paper/pattern-notch.ts';
import { patternPieces } from '../../src/lib/paper/pattern-piece.ts';
import { halfCircle } from '../drafting/bodies.ts';

const drafted = draftSkirt({ waist: 740, hip: 990, waistToHip: 200 }, {
	...halfCircle, panels: 4, lengths: { front: 600, sideLeft: 615, sideRight: 615, back: 640 }, waistDip: { front: 0, back: 10 }, hem: 30, hemFinish: 'turned', hemCorner: 'foldedBack'
});
if (!drafted.ok) throw new Error(JSON.stringify(drafted.issues));
const draft = drafted.value;
const panels = patternPieces(draft.pieces).filter(({ piece }) => /^(front|back)/.test(piece.name));

test('A curve of many arcs is named once on its piece', () => {
	expect(panels).toHaveLength(4);
	for (const pattern of panels) {
		expect(pattern.piece.stitch.edges.filter(({ name }) => name === 'hem').length).toBeGreaterThan(5);
		const { shapes } = patternDrawing(pattern, draft, { unit: 'cm', code: 'draft', date: '2026-11-25', mark: '1a2b3c4d', scale: 1 });
		const said = shapes.flatMap((shape) => (shape.shape === 'text' ? [shape.text] : [])).filter((text) => /line$/.test(text));
		expect(said.sort()).toEqual(['hem fold line', 'stitch line', 'stitch line', 'waist stitch line']);
	}
});

test('A notch stands on the cut line a seam allowance from its place, not on what an edge would be if it ran on', () => {
	const [back] = panels;
	const piece = back!.piece;
	const feet = notchShapes(piece, false, (p) => p).flatMap((shape) => (shape.shape === 'mark' ? [shape.at] : []));
	expect(feet).toHaveLength(piece.notches.length);
	piece.notches.forEach((notch, i) => {
		const on = pointAlongRun(runOf(piece.stitch, notch.edge), notch.at);
		expect(distance(on, feet[i]!)).toBeCloseTo(15, 6);
	});
	expect(stretches(piece.cut).length).toBeGreaterThan(stretches(piece.stitch).length);
});
