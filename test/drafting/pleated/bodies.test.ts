import { expect, test } from 'vitest';
import { crossesItself } from '../../../src/lib/drafting/geometry/crossing.ts';
import { area, edgeLength, stretches } from '../../../src/lib/drafting/geometry/measure.ts';
import { Fields } from '../../../src/lib/drafting/fields.ts';
import type { Issue } from '../../../src/lib/drafting/result.ts';
import type { Body } from '../../../src/lib/drafting/body.ts';
import { draftPleated, type PleatedDraft } from '../../../src/lib/drafting/pleated/draft.ts';
import { readPleated } from '../../../src/lib/drafting/pleated/input.ts';
import type { PleatedSkirt } from '../../../src/lib/drafting/pleated/skirt.ts';
import { takeWay } from '../../../src/lib/drafting/tiered/way.ts';
import { ansurBody, nhanesBody, seeded } from '../bodies.ts';
import { surveyed, walked } from '../measured.ts';
import { anyPleated } from './pleats.ts';

const bodies = Number(process.env.BODIES ?? 2000);

interface Case { readonly body: Body; readonly skirt: PleatedSkirt }
function cases(count: number, seed: number): readonly Case[] {
	const random = seeded(seed);
	return Array.from({ length: count }, (_, i) => {
		const { waist, hip, waistToHip } = i % 2 ? ansurBody(random) : nhanesBody(random);
		// Now and then a reading is missing.
		return { body: i % 10 === 0 ? { waist } : i % 10 === 5 ? { waist, hip } : { waist, hip, waistToHip }, skirt: anyPleated(random) };
	});
}
const drafted = (count: number, seed: number): readonly PleatedDraft[] => cases(count, seed).flatMap(({ body, skirt }) => {
	const draft = draftPleated(body, skirt);
	return draft.ok ? [draft.value] : [];
});
function near(measured: number, figure: number, within = 0.01): void {
	if (!(Math.abs(measured - figure) <= within)) expect(measured).toBe(figure);
}

test('No outline crosses itself, every one runs counterclockwise and closes, and every number is a number', () => {
	const drafts = drafted(bodies, 61);
	// One body in five lacks a reading that pleats need.
	expect(drafts.length).toBeGreaterThan(bodies * 0.6);
	for (const draft of drafts) {
		for (const { stitch, cut } of draft.pieces) {
			for (const outline of [stitch, cut]) {
				if (crossesItself(outline)) expect(outline).toBe('not crossing itself');
				if (!(area(outline) > 0)) expect(area(outline)).toBeGreaterThan(0);
				near(Math.hypot(outline.edges.at(-1)!.end[0] - outline.start[0], outline.edges.at(-1)!.end[1] - outline.start[1]), 0, 1e-9);
				for (const stretch of stretches(outline)) if (!(edgeLength(stretch) > 0)) expect(edgeLength(stretch)).toBeGreaterThan(0);
			}
		}
		// JSON turns what is no number into null; only folds and centres may be null.
		expect(JSON.parse(JSON.stringify(draft))).toEqual(draft);
	}
});

test('Every figure agrees with what is measured on the outlines', () => {
	for (const { figures, pieces, skirt, body } of drafted(bodies, 62)) {
		const panels = pieces.filter(({ name }) => name.startsWith('panel'));
		let [waist, hem] = [0, 0];
		for (const panel of panels) {
			waist += panel.count * walked(panel.stitch, 'waist');
			hem += panel.count * walked(panel.stitch, 'hem');
			near(walked(panel.cut, 'first seam'), figures.panelCutDepth);
			if (!(walked(panel.cut, 'hem') <= skirt.clothWidth + 1e-5)) expect(walked(panel.cut, 'hem')).toBeLessThanOrEqual(skirt.clothWidth);
			near(surveyed(panel.cut), walked(panel.cut, 'hem') * figures.panelCutDepth, 1);
			for (const { at } of panel.notches) if (!(at >= 0 && at <= 1)) expect(at).toBe('along its edge');
		}
		expect(panels.reduce((sum, { count }) => sum + count, 0)).toBe(figures.panels);
		// H + 2nd, or H + 4nd for boxes.
		const flat = body.hip + skirt.hipEase + (skirt.kind === 'box' ? 4 : 2) * skirt.pleats * skirt.depth;
		for (const measured of [waist, hem, figures.flatWidth, figures.hemSweep]) near(measured, flat);
	}
});

test('Folded on its lines, every skirt is as long round as its band at the waist, and as the hip with its ease from the hip to the hem', () => {
	for (const { pieces, skirt, body } of drafted(bodies, 63)) {
		// The lines as drawn: what lies between a fold and the placement line that it is brought onto is hidden.
		const seen = (x: number) => pieces.filter(({ name }) => name.startsWith('panel')).reduce((sum, { lines, count }) => {
			const marks = lines!.filter(({ name }) => name === 'fold line' || name === 'placement line').flatMap(({ from, to }) => {
				if (x < from[0] || x > to[0] || (x === from[0] && x > 0)) return [];
				return [from[1] + ((to[1] - from[1]) * (x - from[0])) / (to[0] - from[0])];
			});
			// Two and two: each pair bounds a stretch that is seen.
			let width = 0;
			for (let i = 0; i < marks.length; i += 2) width += marks[i + 1]! - marks[i]!;
			return sum + count * width;
		}, 0);
		const [waist, hip] = [body.waist + skirt.waistEase, body.hip + skirt.hipEase];
		near(seen(0), waist);
		near(seen(body.waistToHip / 2), (waist + hip) / 2);
		near(seen(body.waistToHip), hip);
		near(seen(skirt.length - skirt.band.depth), hip);
	}
});

test('Each hidden fold lies midway between the fold and the placement line that meet behind it', () => {
	for (const { pieces, figures } of drafted(300, 64)) {
		for (const { lines = [] } of pieces.filter(({ name }) => name.startsWith('panel'))) {
			const upper = lines.filter(({ from, name }) => from[0] === 0 && !name.startsWith('hip line'));
			upper.forEach(({ name, from, to }, i) => {
				if (name !== 'inner fold') return;
				const [before, after] = [upper[i - 1]!, upper[i + 1]!];
				expect([before.name, after.name].sort()).toEqual(['fold line', 'placement line']);
				near(from[1], (before.from[1] + after.from[1]) / 2, 1e-6);
				near(to[1], (before.to[1] + after.to[1]) / 2, 1e-6);
				near(after.from[1] - from[1], figures.depthAtWaist, 1e-6);
				near(after.to[1] - to[1], figures.depthAtHip, 1e-6);
			});
		}
	}
});

test('Every sewn pair matches where it is measured, to 0.01 mm', () => {
	for (const { pieces, seams, checks } of drafted(Math.min(bodies, 2000), 65)) {
		const lengths = new Map<string, number>();
		const measure = (edges: PleatedDraft['seams'][number]['a']) => edges.reduce((sum, { piece, copy, edge, from, to }) => {
			const { stitch, count } = pieces.find(({ name }) => name === piece)!;
			if (copy > count) expect(copy).toBeLessThanOrEqual(count);
			const length = lengths.get(`${piece} ${edge}`) ?? walked(stitch, edge);
			lengths.set(`${piece} ${edge}`, length);
			return sum + length * Math.abs(to - from);
		}, 0);
		for (const seam of seams) {
			near(measure(seam.a), seam.lengthA);
			near(measure(seam.b), seam.lengthB);
			near(seam.lengthA - seam.lengthB, 0);
		}
		expect(checks.find(({ code }) => code === 'seam-walk')?.severity).toBe('good');
	}
});

test('The landmarks of the folded waist meet the band’s', () => {
	for (const { pieces, seams, skirt } of drafted(300, 66)) {
		const order = skirt.zipAt === 'leftSide' ? ['left side', 'centre back', 'right side', 'centre front'] : ['centre back', 'right side', 'centre front', 'left side'];
		const { a, lengthA } = seams.find(({ name }) => name === 'waist to band')!;
		let found = 0;
		for (const { name, notches, stitch, count } of pieces.filter((piece) => piece.name.startsWith('panel'))) {
			for (const notch of notches.filter(({ marks }) => order.includes(marks))) {
				// How much is seen before the notch, going round.
				let before = 0;
				for (const { piece, copy, edge, from, to } of a) {
					const length = walked(stitch, edge) * (from - to);
					if (piece === name && copy === (notch.copy ?? count) && notch.at > to - 1e-9) {
						before += (from - Math.min(from, notch.at)) * walked(stitch, edge);
						break;
					}
					before += piece === name ? length : walked(pieces.find((other) => other.name === piece)!.stitch, edge) * (from - to);
				}
				near(before / lengthA, order.indexOf(notch.marks) / 4, 1e-6);
				found++;
			}
		}
		expect(found).toBe(3);
	}
});

test('Taking any way out of a check clears it', () => {
	const taken = new Set<string>();
	for (const { body, skirt, checks } of drafted(Math.max(2000, bodies), 65)) {
		for (const check of checks) {
			for (const way of check.waysOut) {
				const draft = draftPleated(body, takeWay(skirt, way));
				const where = JSON.stringify({ body, skirt, check, way });
				if (!draft.ok) throw new Error(`can't be cut: ${where}`);
				const left = draft.value.checks.filter(({ code, about, severity }) => code === check.code && about === check.about && severity !== 'good');
				if (left.length > 0) throw new Error(`still there: ${where} ${JSON.stringify(left)}`);
				taken.add(`${check.code} ${way.path}`);
			}
		}
	}
	expect([...taken].sort()).toEqual([
		'hip-fit skirt.hipEase', 'opening-longer-than-skirt skirt.length', 'pleats-overlap skirt.depth', 'stride skirt.depth', 'stride skirt.pleats',
		'taper-shallows skirt.depth', 'taper-shallows skirt.hipEase', 'taper-shallows skirt.pleats', 'taper-steep skirt.pleats', 'waist-bulk skirt.depth',
		'zip-allowance skirt.allowances.seam', 'zip-longer-than-skirt skirt.length'
	]);
});

test('Taking any way on from a refusal makes a skirt that can be cut, as far as that refusal goes', () => {
	const taken = new Set<string>();
	const random = seeded(70);
	for (const { body, skirt } of cases(Math.max(2000, bodies), 67)) {
		const bent: PleatedSkirt = {
			...skirt, length: skirt.length * (0.05 + random()), hem: 400 * random(), clothWidth: 300 + 300 * random(), depth: random() < 0.5 ? 5 + 10 * random() : skirt.depth,
			waistEase: 300 * random(), allowances: { waist: 15, seam: 100 * random() }
		};
		const draft = draftPleated(body, bent);
		for (const issue of draft.ok ? [] : draft.issues) {
			// What mends a missing reading is the reading.
			if (!issue.path.startsWith('body')) expect(issue.waysOut?.length).toBeGreaterThan(0);
			for (const way of issue.waysOut ?? []) {
				const again = draftPleated(body, takeWay(bent, way));
				const left = again.ok ? [] : again.issues.filter(({ code }) => code === issue.code);
				if (left.length > 0) throw new Error(`still there: ${JSON.stringify({ body, bent, issue, way, left })}`);
				taken.add(`${issue.code} ${way.path}`);
			}
		}
	}
	expect([...taken].sort()).toEqual([
		'band-deeper-than-length skirt.band.depth', 'hem-deeper-than-skirt skirt.hem', 'pleat-wider-than-cloth skirt.clothWidth', 'pleat-wider-than-cloth skirt.depth',
		'pleat-wider-than-cloth skirt.pleats', 'pleats-end-above-hip skirt.length', 'taper-eats-pleat skirt.depth', 'taper-eats-pleat skirt.hipEase', 'taper-eats-pleat skirt.pleats'
	]);
});

test('A change of unit changes nothing: not a figure, not a check', () => {
	const plain = new Set(['pleats']);
	for (const { body, skirt } of cases(500, 68)) {
		const inUnit = (unit: 'mm' | 'cm' | 'in') => {
			const per = unit === 'in' ? 25.4 : unit === 'cm' ? 10 : 1;
			const scaled = (value: unknown): unknown => typeof value === 'number' ? value / per
				: typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, plain.has(k) ? v : scaled(v)])) : value;
			const issues: Issue[] = [];
			const read = readPleated(Fields.of(scaled(skirt), 'skirt', unit, issues)!, true);
			// What lies outside the limits is refused in every unit alike.
			return read ? draftPleated(body, read) : { ok: false, issues } as const;
		};
		const mm = inUnit('mm');
		for (const unit of ['cm', 'in'] as const) {
			const other = inUnit(unit);
			if (!mm.ok || !other.ok) {
				expect(other.ok ? [] : other.issues.map(({ code, path }) => [code, path])).toEqual(mm.ok ? [] : mm.issues.map(({ code, path }) => [code, path]));
				continue;
			}
			for (const [name, figure] of Object.entries(mm.value.figures)) near(other.value.figures[name as keyof PleatedDraft['figures']], figure, 1e-6);
			const told = ({ checks }: PleatedDraft) => checks.map(({ code, severity, about, waysOut }) => [code, severity, about, waysOut.length]);
			expect(told(other.value)).toEqual(told(mm.value));
		}
	}
});

test('Drafting leaves its input untouched', () => {
	for (const one of cases(200, 69)) {
		const before = structuredClone(one);
		draftPleated(one.body, one.skirt);
		expect(one).toEqual(before);
	}
});
