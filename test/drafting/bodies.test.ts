import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { crossesItself } from '../../src/lib/drafting/geometry/crossing.ts';
import { area, edgeLength, stretches } from '../../src/lib/drafting/geometry/measure.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import type { Body } from '../../src/lib/drafting/body.ts';
import { takeWayOut } from '../../src/lib/drafting/way-out.ts';
import { ansurBody, anySkirt, anyStyle, nhanesBody, seeded, type Random } from './bodies.ts';
import { surveyed, walked } from './measured.ts';

/** CI's number of bodies; a nightly run asks for more. */
const bodies = Number(process.env.BODIES ?? 2000);

interface Case { readonly body: Body; readonly skirt: Skirt }
function cases(count: number, seed: number, chosen: (random: Random, waist: number) => Skirt = anySkirt): readonly Case[] {
	const random = seeded(seed);
	return Array.from({ length: count }, (_, i) => {
		const { waist, hip, waistToHip } = i % 2 ? ansurBody(random) : nhanesBody(random);
		// Now and then a reading is missing.
		const body = i % 10 === 0 ? { waist } : i % 10 === 5 ? { waist, hip } : { waist, hip, waistToHip };
		return { body, skirt: chosen(random, waist) };
	});
}
function drafted(count: number, seed: number, chosen?: (random: Random, waist: number) => Skirt): readonly Draft[] {
	return cases(count, seed, chosen).flatMap(({ body, skirt }) => {
		const draft = draftSkirt(body, skirt);
		return draft.ok ? [draft.value] : [];
	});
}

test('The sampled bodies have the means of the surveys they are drawn from', () => {
	const random = seeded(7);
	const drawn = Array.from({ length: 20000 }, () => ansurBody(random));
	const mean = (of: (body: Required<Body>) => number) => drawn.reduce((sum, body) => sum + of(body), 0) / drawn.length;
	// ANSUR II 2012: means of ln waist and ln hip (cm) and of waist to hip.
	expect(mean(({ waist }) => Math.log(waist / 10))).toBeCloseTo(4.4488, 2);
	expect(mean(({ hip }) => Math.log(hip / 10))).toBeCloseTo(4.6235, 2);
	expect(mean(({ waistToHip }) => waistToHip / 10)).toBeCloseTo(19.22, 1);
	// 0.9 % of them have a waist over the hip, says the survey; the normal model gives near that.
	expect(drawn.filter(({ waist, hip }) => waist > hip).length / drawn.length).toBeLessThan(0.02);
});

test('Every figure agrees with the length measured on the outlines to 0.01 mm', () => {
	const drafts = drafted(bodies, 1);
	expect(drafts.length).toBeGreaterThan(bodies * 0.8);
	for (const { figures, pieces, skirt } of drafts) {
		const shell = pieces.filter(({ name }) => /^(panel|front|back)/.test(name));
		expect(shell.reduce((sum, { count }) => sum + count, 0)).toBe(skirt.panels);
		let [waist, hem] = [0, 0];
		for (const panel of shell) {
			waist += panel.count * walked(panel.stitch, 'waist');
			hem += panel.count * walked(panel.stitch, 'hem');
			near(walked(panel.cut, 'waist'), figures.panelWaistCutLength);
			near(walked(panel.cut, 'hem'), figures.panelHemCutLength);
			near(walked(panel.stitch, panel.stitch.edges[0]!.name), figures.skirtLength);
			near(surveyed(panel.cut) / figures.panelCutArea, 1, 1e-6);
			near(area(panel.cut) / figures.panelCutArea, 1, 1e-9);
			// The cut waist's arc, without the strips of seam allowance, is shorter by the clip; its radius is the figure.
			near(Math.hypot(...panel.cut.edges[3]!.end), figures.cutWaistRadius);
			near(Math.hypot(...panel.cut.edges[1]!.end), figures.cutHemRadius);
		}
		near(waist, figures.waistSeamGirth);
		near(hem, figures.hemSweep);
		near(figures.waistSeamGirth - figures.sweepAngle * figures.cutWaistRadius, figures.waistClip);
		// The interfacing is cut to match the band: the shopping list says so of both.
		for (const { cut } of pieces.filter(({ name }) => name.startsWith('band'))) {
			near(walked(cut, 'waist'), figures.bandCutLength);
			near(walked(cut, 'last end'), figures.bandCutDepth);
		}
	}
});
function near(measured: number, figure: number, within = 0.01): void {
	if (!(Math.abs(measured - figure) <= within)) expect(measured).toBe(figure);
}

test('Seam allowances are parallel strips: every cut edge lies its own allowance outside its stitch edge', () => {
	for (const { pieces, skirt } of drafted(500, 2)) {
		for (const { stitch, cut } of pieces) {
			stitch.edges.forEach((edge, i) => {
				const cutEdge = cut.edges[i]!;
				expect(cutEdge.name).toBe(edge.name);
				const from = i === 0 ? stitch.start : stitch.edges[i - 1]!.end;
				const expected = edge.name === 'hem' ? skirt.hem : /waist|facing/.test(edge.name) ? skirt.allowances.waist : skirt.allowances.seam;
				const [dx, dy] = [edge.end[0] - from[0], edge.end[1] - from[1]];
				// Distance of the cut edge's end from the stitch line, outwards: to the right of the way a line runs.
				const outside = edge.centre
					? Math.sign(edge.turn) * (Math.hypot(cutEdge.end[0], cutEdge.end[1]) - Math.hypot(edge.end[0], edge.end[1]))
					: ((cutEdge.end[0] - from[0]) * dy - (cutEdge.end[1] - from[1]) * dx) / Math.hypot(dx, dy);
				near(outside, expected, 1e-6);
			});
		}
	}
});

test('No outline crosses itself, every one runs counterclockwise and closes, and every number is a number', () => {
	const drafts = [...drafted(bodies, 3), ...drafted(bodies, 33, anyStyle)];
	for (const draft of drafts) {
		for (const { stitch, cut, hole } of draft.pieces) {
			// A hole runs the other way round, and lies well inside.
			if (hole) {
				expect(area(hole.stitch)).toBeLessThan(0);
				expect(-area(hole.cut)).toBeLessThanOrEqual(-area(hole.stitch));
				expect(-area(hole.stitch)).toBeLessThan(area(stitch));
			}
			for (const outline of [stitch, cut]) {
				if (crossesItself(outline)) expect(outline).toBe('not crossing itself');
				if (!(area(outline) > 0)) expect(area(outline)).toBeGreaterThan(0);
				const end = outline.edges.at(-1)!.end;
				near(Math.hypot(end[0] - outline.start[0], end[1] - outline.start[1]), 0, 1e-9);
				for (const stretch of stretches(outline)) if (!(edgeLength(stretch) > 0)) expect(edgeLength(stretch)).toBeGreaterThan(0);
			}
		}
		// JSON turns what is no number into null; only folds and centres may be null.
		const again = JSON.parse(JSON.stringify(draft)) as Draft;
		expect(again).toEqual(draft);
	}
});

test('Every sewn pair matches where it is measured on the outlines', () => {
	for (const { pieces, seams, checks } of [...drafted(bodies, 4), ...drafted(bodies, 44, anyStyle)]) {
		const measure = (edges: Draft['seams'][number]['a']) => edges.reduce((sum, { piece, edge, from, to }) => {
			const { stitch, hole, count } = pieces.find(({ name }) => name === piece)!;
			expect(count).toBeGreaterThan(0);
			return sum + walked(hole?.stitch.edges[0]!.name === edge ? hole.stitch : stitch, edge) * Math.abs(to - from);
		}, 0);
		for (const seam of seams) {
			near(measure(seam.a), seam.lengthA);
			near(measure(seam.b), seam.lengthB);
			near(seam.lengthA - seam.lengthB, seam.ease);
		}
		expect(checks.find(({ code }) => code === 'seam-walk')?.severity).toBe('good');
	}
}, 60_000);

test('A change of unit changes nothing: not a figure, not a check', () => {
	for (const { body, skirt } of [...cases(500, 5), ...cases(500, 55, anyStyle)]) {
		const inUnit = (unit: 'mm' | 'cm' | 'in') => {
			const per = unit === 'in' ? 25.4 : unit === 'cm' ? 10 : 1;
			const scaled = (value: unknown, key = ''): unknown =>
				typeof value === 'number' ? (key === 'share' || key === 'panels' ? value : value / per)
					: Array.isArray(value) ? value : typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, scaled(v, k)])) : value;
			const input = checkInput({ unit, body: scaled(body), skirt: scaled(skirt) });
			if (!input.ok) throw new Error(JSON.stringify(input.issues));
			return draftSkirt(input.value.body, input.value.skirt);
		};
		const mm = inUnit('mm');
		for (const unit of ['cm', 'in'] as const) {
			const other = inUnit(unit);
			expect(other.ok).toBe(mm.ok);
			if (!mm.ok || !other.ok) {
				expect(mm.ok ? [] : mm.issues.map(({ code }) => code)).toEqual(other.ok ? [] : other.issues.map(({ code }) => code));
				continue;
			}
			for (const [name, figure] of Object.entries(mm.value.figures)) near(other.value.figures[name as keyof Draft['figures']]!, figure, 1e-6 * Math.max(1, figure / 1e6));
			expect(other.value.checks.map(({ code, severity, about, waysOut }) => [code, severity, about, waysOut.length]))
				.toEqual(mm.value.checks.map(({ code, severity, about, waysOut }) => [code, severity, about, waysOut.length]));
		}
	}
});

test('Drafting leaves its input untouched', () => {
	for (const { body, skirt } of cases(200, 6)) {
		const before = structuredClone({ body, skirt });
		draftSkirt(body, skirt);
		expect({ body, skirt }).toEqual(before);
	}
});

test('Taking any way out of a check clears it', () => {
	const taken = new Map<string, number>();
	const many = 2 * Math.max(2000, bodies);
	for (const { body, skirt, checks } of [...drafted(many, 8), ...drafted(many, 88, anyStyle)]) {
		for (const check of checks) {
			for (const way of check.waysOut) {
				const draft = draftSkirt(body, takeWayOut(skirt, way));
				const where = JSON.stringify({ body, skirt, check, way });
				if (!draft.ok) throw new Error(`can't be cut: ${where}`);
				const left = draft.value.checks.filter(({ code, about, severity }) => code === check.code && about === check.about && severity !== 'good');
				if (left.length > 0) throw new Error(`still there: ${where} ${JSON.stringify(left)}`);
				taken.set(`${check.code} ${way.path}`, (taken.get(`${check.code} ${way.path}`) ?? 0) + 1);
			}
		}
	}
	// None of them is an empty promise: each was taken.
	expect([...taken.keys()].sort()).toEqual([
		'casing-depth skirt.band.depth', 'casing-depth skirt.band.elastic', 'hem-surplus skirt.hem', 'hem-surplus skirt.hemFinish', 'hip-fit skirt.hipEase', 'hip-fit skirt.share', 'lining-fit skirt.lining.share', 'lining-fit skirt.share',
		'lining-opening skirt.length', 'lining-shorter skirt.lining.shorterBy', 'opening-longer-than-skirt skirt.length', 'pulls-on skirt.closure', 'pulls-on skirt.waistEase', 'stride skirt.share',
		'zip-allowance skirt.allowances.seam', 'zip-longer-than-skirt skirt.length'
	]);
});

test('Taking any way on from a refusal makes a skirt that can be cut, as far as that refusal goes', () => {
	const taken = new Set<string>();
	const random = seeded(9);
	for (let i = 0; i < Math.max(2000, bodies); i++) {
		const { waist } = nhanesBody(random);
		// Small waists, full flares, wide allowances: where there is no room.
		const chosen = anySkirt(random);
		const body = { waist: waist * (0.3 + 0.5 * random()) };
		const skirt: Skirt = { ...chosen, share: 0.8 + 1.2 * random(), panels: 1 + Math.floor(random() * 3), allowances: { waist: 40 * random(), seam: 60 * random() }, hem: 400 * random(), lining: { shorterBy: 500 * random(), share: null } };
		const draft = draftSkirt(body, skirt);
		for (const issue of draft.ok ? [] : draft.issues) {
			for (const way of issue.waysOut ?? []) {
				const again = draftSkirt(body, takeWayOut(skirt, way));
				const left = again.ok ? [] : again.issues.filter(({ code }) => code === issue.code);
				if (left.length > 0) throw new Error(`still there: ${JSON.stringify({ body, skirt, issue, way, left })}`);
				taken.add(`${issue.code} ${way.path}`);
			}
		}
	}
	expect([...taken].sort()).toEqual([
		'hem-deeper-than-skirt skirt.hem', 'lining-too-short skirt.lining.shorterBy', 'no-room-for-allowance skirt.allowances.seam',
		'no-room-for-allowance skirt.allowances.waist', 'no-room-for-allowance skirt.share', 'panel-laps-itself skirt.panels'
	]);
});
