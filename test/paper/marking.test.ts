import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcTable, ordinates } from '../../src/lib/paper/marking.ts';
import { markingPlan } from '../../src/lib/paper/marking-plan.ts';
import { sampleDraft } from './sample-draft.ts';

const graduations = [1, 5, 25.4 / 8, 25.4 / 16];

describe('the table of an arc from its corner', () => {
	const asked = fc.record({
		radius: fc.double({ min: 40, max: 2000, noNaN: true }), to: fc.double({ min: 0.05, max: 3, noNaN: true }),
		strip: fc.constantFrom(0, 10, 15.875, 20), graduation: fc.constantFrom(...graduations)
	});

	it('puts every mark on the circle, and every rounded mark within half a graduation each way', () => {
		fc.assert(
			fc.property(asked, ({ radius, to, strip, graduation }) => {
				for (const { down, out, read, off } of arcTable({ radius, from: 0, to, strip, graduation }).marks) {
					expect(Math.hypot(down, out)).toBeCloseTo(radius, 6);
					expect(Math.abs(read.down - down)).toBeLessThanOrEqual(graduation / 2 + 1e-9);
					expect(Math.abs(read.out - out)).toBeLessThanOrEqual(graduation / 2 + 1e-9);
					expect(Math.abs(off)).toBeLessThanOrEqual(graduation * Math.SQRT1_2 + 1e-9);
				}
			})
		);
	});
	it('leaves the arc by less than half a millimetre between two marks, measured at the middle of each chord', () => {
		fc.assert(
			fc.property(asked, ({ radius, to, strip, graduation }) => {
				const { marks, chordError } = arcTable({ radius, from: 0, to, strip, graduation });
				for (const [i, b] of marks.slice(1).entries()) {
					const a = marks[i]!;
					const leaves = radius - Math.hypot((a.down + b.down) / 2, (a.out + b.out) / 2);
					expect(leaves).toBeLessThan(0.5);
					expect(leaves).toBeLessThanOrEqual(chordError + 1e-6);
				}
			})
		);
	});
	it('ends where the arc meets the far edge’s cut line, a parallel strip beside it', () => {
		fc.assert(
			fc.property(asked, ({ radius, to, strip, graduation }) => {
				const { down, out } = arcTable({ radius, from: 0, to, strip, graduation }).marks.at(-1)!;
				// How far the last mark lies beside the edge that runs from the corner at the angle `to`.
				expect(out * Math.cos(to) - down * Math.sin(to)).toBeCloseTo(strip, 6);
			})
		);
	});
	it('says how much longer the line becomes by rounding: the same as the rounded marks’ own line, to second order', () => {
		const { radius, marks, cost } = arcTable({ radius: 236, from: 0, to: Math.PI / 2, graduation: 5 });
		// Each rounded mark pulled straight from the corner onto its angle: the polygon of those against the true one.
		const at = (r: number, a: number): [number, number] => [r * Math.cos(a), r * Math.sin(a)];
		const length = (radii: readonly number[]): number => marks.slice(1).reduce((sum, mark, i) => {
			const [a, b] = [at(radii[i]!, marks[i]!.angle), at(radii[i + 1]!, mark.angle)];
			return sum + Math.hypot(a[0] - b[0], a[1] - b[1]);
		}, 0);
		// A zigzag is a little longer than a smooth line drawn through it.
		expect(Math.abs(length(marks.map((m) => radius + m.off)) - length(marks.map(() => radius)) - cost.longer)).toBeLessThan(1.5);
	});
	it('reads a 3-4-5 triangle: 500 from the corner is 400 down and 300 out (circle geometry)', () => {
		const { marks } = arcTable({ radius: 500, from: 0, to: Math.asin(0.6), graduation: 1 });
		expect(marks[0]).toMatchObject({ mark: 1, read: { down: 500, out: 0 }, off: 0 });
		expect(marks.at(-1)!.read).toEqual({ down: 400, out: 300 });
	});
	it('refuses an arc that its allowance swallows, with its numbers', () => {
		expect(() => arcTable({ radius: 10, from: 0, to: 1, strip: 15, graduation: 1 })).toThrow(/radius 10 .* strip of 15/);
	});
});

describe('ordinates from a chord', () => {
	const asked = fc.record({
		radius: fc.double({ min: 500, max: 20000, noNaN: true }), part: fc.double({ min: 0.02, max: 0.9, noNaN: true }), graduation: fc.constantFrom(...graduations)
	});

	it('follow y(x) = √(R² − x²) − (R − sagitta), and fall to nothing at the chord’s end', () => {
		fc.assert(
			fc.property(asked, ({ radius, part, graduation }) => {
				const chord = 2 * radius * part;
				const table = ordinates(radius, chord, graduation);
				for (const { along, rise } of table.marks) expect(rise).toBeCloseTo(Math.sqrt(radius ** 2 - along ** 2) - (radius - table.sagitta), 5);
				expect(table.marks[0]!.rise).toBeCloseTo(table.sagitta, 6);
				expect(table.marks.at(-1)!.along).toBeCloseTo(chord / 2, 6);
				expect(table.marks.at(-1)!.rise).toBeCloseTo(0, 5);
			})
		);
	});
	it('stand close enough that a chord between two leaves the arc by less than half a millimetre', () => {
		fc.assert(
			fc.property(asked, ({ radius, part, graduation }) => {
				const { marks, sagitta } = ordinates(radius, 2 * radius * part, graduation);
				for (const [i, b] of marks.slice(1).entries()) {
					const a = marks[i]!;
					const low = radius - sagitta;
					expect(radius - Math.hypot((a.along + b.along) / 2, (a.rise + b.rise) / 2 + low)).toBeLessThan(0.5);
				}
			})
		);
	});
	it('reads a 3-4-5 triangle: chord 800 in a circle of 500 has a sagitta of 200, and rises 100 at 300 (circle geometry)', () => {
		const table = ordinates(500, 800, 1);
		expect(table.sagitta).toBeCloseTo(200, 9);
		// From the middle of the chord at 300 along: √(500² − 300²) − 300.
		const near = table.marks.reduce((a, b) => (Math.abs(a.along - 300) < Math.abs(b.along - 300) ? a : b));
		expect(near.rise).toBeCloseTo(Math.sqrt(250000 - near.along ** 2) - 300, 9);
		expect(Math.sqrt(500 ** 2 - 300 ** 2) - 300).toBe(100);
	});
	it('refuses a chord longer than the circle is wide', () => {
		expect(() => ordinates(100, 201, 1)).toThrow(/chord of 201/);
	});
});

describe('what a draft is marked out from', () => {
	it('marks a half circle from the fold: radii 235.5 stitch, 220.5 cut and 835.5 hem for a waist seam of 740 (740 / π, circle geometry)', () => {
		const plan = markingPlan(sampleDraft(), 1);
		expect(plan.folded).toBe(true);
		expect(plan.far).toBe(false);
		const first = plan.tables.map(({ rows }) => rows[0]!.first);
		expect(first).toEqual([Math.round(740 / Math.PI), Math.round(740 / Math.PI - 15), Math.round(740 / Math.PI + 580 + 20)]);
		// A quarter turn on, the stitch line meets the back seam level with the corner; the cut lines go on through the allowance.
		expect(plan.tables[0]!.rows.at(-1)!.first).toBe(0);
		expect(plan.tables[1]!.rows.at(-1)!.first).toBe(-20);
		expect(plan.tables[2]!.rows.at(-1)!.first).toBe(-20);
	});
	it('takes a chord where the corner is out of reach, and says how far apart the two guide lines are', () => {
		const draft = sampleDraft({ share: 0.1, panels: 2, length: 800 });
		const plan = markingPlan(draft, 1);
		expect(plan.far).toBe(true);
		// Both cut lines end on the same straight seam edge: the guide lines are as far apart as its ends along the middle line.
		const { cut } = draft.pieces[0]!;
		const stops = [cut.start, ...cut.edges.map((edge) => edge.end)].map(([x]) => x);
		expect(plan.guides!.apart).toBeCloseTo(Math.max(...stops) - Math.min(...stops), 6);
	});
	it('marks from a panel’s middle where it has no fold', () => {
		expect(markingPlan(sampleDraft({ panels: 6 }), 1).folded).toBe(false);
		expect(markingPlan(sampleDraft({ share: 1, panels: 2, zipAt: 'leftSide' }), 1).folded).toBe(true);
	});
});
