import { expect, test } from 'vitest';
import { crossesItself } from '../../../src/lib/drafting/geometry/crossing.ts';
import { area, edgeLength, stretches } from '../../../src/lib/drafting/geometry/measure.ts';
import { Fields } from '../../../src/lib/drafting/fields.ts';
import type { Issue } from '../../../src/lib/drafting/result.ts';
import type { Body } from '../../../src/lib/drafting/body.ts';
import { draftTiered, type TieredDraft } from '../../../src/lib/drafting/tiered/draft.ts';
import { readTiered } from '../../../src/lib/drafting/tiered/input.ts';
import type { TieredSkirt } from '../../../src/lib/drafting/tiered/skirt.ts';
import { takeWay } from '../../../src/lib/drafting/tiered/way.ts';
import { ansurBody, nhanesBody, seeded } from '../bodies.ts';
import { surveyed, walked } from '../measured.ts';
import { anyTiered } from './tiers.ts';

const bodies = Number(process.env.BODIES ?? 2000);

interface Case { readonly body: Body; readonly skirt: TieredSkirt }
function cases(count: number, seed: number): readonly Case[] {
	const random = seeded(seed);
	return Array.from({ length: count }, (_, i) => {
		const { waist, hip, waistToHip } = i % 2 ? ansurBody(random) : nhanesBody(random);
		// Now and then a reading is missing.
		return { body: i % 10 === 0 ? { waist } : i % 10 === 5 ? { waist, hip } : { waist, hip, waistToHip }, skirt: anyTiered(random) };
	});
}
const drafted = (count: number, seed: number): readonly TieredDraft[] => cases(count, seed).flatMap(({ body, skirt }) => {
	const draft = draftTiered(body, skirt);
	return draft.ok ? [draft.value] : [];
});
function near(measured: number, figure: number, within = 0.01): void {
	if (!(Math.abs(measured - figure) <= within)) expect(measured).toBe(figure);
}

test('No outline crosses itself, every one runs counterclockwise and closes, and every number is a number', () => {
	const drafts = drafted(bodies, 41);
	expect(drafts.length).toBeGreaterThan(bodies * 0.8);
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

test('Every figure agrees with what is measured on the outlines, and the tiers with the finished length', () => {
	for (const { figures, pieces, skirt, body } of drafted(bodies, 42)) {
		let [length, girth] = [skirt.band.depth, figures.waistSeamGirth];
		for (const tier of figures.tiers) {
			const piece = pieces.find(({ name }) => name === `panel tier ${tier.tier}`)!;
			expect(piece.count).toBe(tier.strips);
			const [top, lower] = [tier.tier === 1 ? 'waist' : 'gathered edge', tier.tier === skirt.tiers ? 'hem' : 'lower edge'];
			near(walked(piece.stitch, top) * piece.count, girth * tier.ratio);
			near(walked(piece.stitch, lower) * piece.count, tier.girth);
			near(walked(piece.stitch, 'first seam'), tier.length);
			near(walked(piece.cut, top), tier.stripCutLength);
			near(walked(piece.cut, 'first seam'), tier.cutDepth);
			near(surveyed(piece.cut), tier.stripCutLength * tier.cutDepth, 1e-6 * tier.stripCutLength * tier.cutDepth);
			// It lies within the cloth, and one strip fewer would not.
			if (!(tier.stripCutLength <= skirt.clothWidth + 1e-5)) expect(tier.stripCutLength).toBeLessThanOrEqual(skirt.clothWidth);
			if (tier.strips > 1) expect(tier.girth / (tier.strips - 1) + 2 * skirt.allowances.seam).toBeGreaterThan(skirt.clothWidth);
			for (const { at } of piece.notches) if (!(at >= 0 && at <= 1)) expect(at).toBe('along its edge');
			length += tier.length;
			girth = tier.girth;
		}
		near(length, skirt.length);
		near(girth, figures.hemSweep);
		if (skirt.band.kind === 'elastic' && body.hip !== undefined) expect(figures.waistSeamGirth).toBeGreaterThanOrEqual(body.hip + skirt.hipEase);
	}
});

test('Every sewn pair matches where it is measured, to 0.01 mm or to the gathers it states', () => {
	let gathered = 0;
	for (const { pieces, seams, checks, figures } of drafted(Math.min(bodies, 2000), 43)) {
		const measure = (edges: TieredDraft['seams'][number]['a']) => edges.reduce((sum, { piece, copy, edge, from, to }) => {
			const { stitch, count } = pieces.find(({ name }) => name === piece)!;
			if (copy > count) expect(copy).toBeLessThanOrEqual(count);
			return sum + walked(stitch, edge) * Math.abs(to - from);
		}, 0);
		for (const seam of seams) {
			near(measure(seam.a), seam.lengthA);
			near(measure(seam.b), seam.lengthB);
			near(seam.lengthA - seam.lengthB, seam.ease);
			if (seam.ease > 0) gathered++;
		}
		expect(checks.find(({ code }) => code === 'seam-walk')?.severity).toBe('good');
		for (const tier of figures.tiers.slice(1)) near(seams.find(({ name }) => name === `tier ${tier.tier} to tier ${tier.tier - 1}`)!.ease, tier.gathered);
	}
	expect(gathered).toBeGreaterThan(bodies);
});

test('The notches of two edges sewn together lie at the same places round the skirt', () => {
	for (const { pieces, skirt } of drafted(300, 44)) {
		const places = (tier: number, edge: string, back: boolean) => {
			const piece = pieces.find(({ name }) => name === `panel tier ${tier}`)!;
			return piece.notches.filter((notch) => notch.edge === edge)
				.map(({ at, copy = 1, marks }) => ({ marks, place: (copy - 1 + (back ? 1 - at : at)) / piece.count }));
		};
		const band = pieces.find(({ name }) => /^band( casing)?$/.test(name))!;
		for (let tier = 1; tier <= skirt.tiers; tier++) {
			for (const { marks, place } of places(tier, tier === 1 ? 'waist' : 'gathered edge', true)) {
				const order = skirt.zipAt === 'leftSide' ? ['left side', 'centre back', 'right side', 'centre front'] : ['centre back', 'right side', 'centre front', 'left side'];
				near(place, order.indexOf(marks) / 4, 1e-9);
				if (tier === 1) expect(band.notches.some((notch) => notch.marks === marks)).toBe(true);
			}
		}
	}
});

test('Taking any way out of a check clears it', () => {
	const taken = new Set<string>();
	for (const { body, skirt, checks } of drafted(Math.max(2000, bodies), 45)) {
		for (const check of checks) {
			for (const way of check.waysOut) {
				const draft = draftTiered(body, takeWay(skirt, way));
				const where = JSON.stringify({ body, skirt, check, way });
				if (!draft.ok) throw new Error(`can't be cut: ${where}`);
				const left = draft.value.checks.filter(({ code, about, severity }) => code === check.code && about === check.about && severity !== 'good');
				if (left.length > 0) throw new Error(`still there: ${where} ${JSON.stringify(left)}`);
				taken.add(`${check.code} ${way.path.replace(/\d/, '#')}`);
			}
		}
	}
	expect([...taken].sort()).toEqual([
		'casing-depth skirt.band.depth', 'casing-depth skirt.band.elastic', 'gathers-dense skirt.ratios.#', 'hip-cannot-pass skirt.ratios.#',
		'hip-fit skirt.hipEase', 'hip-fit skirt.ratios.#', 'opening-longer-than-skirt skirt.ratios.#', 'stride skirt.ratios.#', 'zip-allowance skirt.allowances.seam',
		'zip-longer-than-skirt skirt.ratios.#'
	]);
});

test('Taking any way on from a refusal makes a skirt that can be cut, as far as that refusal goes', () => {
	const taken = new Set<string>();
	const random = seeded(46);
	for (const { body, skirt } of cases(Math.max(2000, bodies), 47)) {
		const bent: TieredSkirt = {
			...skirt, length: skirt.length * (0.05 + random()), hem: 400 * random(), clothWidth: 100 + 300 * random(), allowances: { waist: 15, seam: 100 * random() },
			...(random() < 0.3 && { ratios: { 1: 3, 2: 3, 3: 3, 4: 3, 5: 3, 6: 3 } })
		};
		const draft = draftTiered(body, bent);
		for (const issue of draft.ok ? [] : draft.issues) {
			expect(issue.waysOut?.length).toBeGreaterThan(0);
			for (const way of issue.waysOut ?? []) {
				const again = draftTiered(body, takeWay(bent, way));
				const left = again.ok ? [] : again.issues.filter(({ code }) => code === issue.code);
				if (left.length > 0) throw new Error(`still there: ${JSON.stringify({ body, bent, issue, way, left })}`);
				taken.add(`${issue.code} ${way.path.replace(/\d/, '#')}`);
			}
		}
	}
	expect([...taken].sort()).toEqual([
		'band-deeper-than-length skirt.band.depth', 'cloth-too-narrow skirt.clothWidth', 'hem-deeper-than-tier skirt.hem', 'tier-too-wide skirt.ratios.#',
		'tier-too-wide skirt.tiers', 'tiers-do-not-add-up skirt.length', 'tiers-do-not-add-up skirt.lengths.each.#'
	]);
});

test('A change of unit changes nothing: not a figure, not a check', () => {
	const plain = new Set(['tiers', 'ratios', 'by']);
	for (const { body, skirt } of cases(500, 48)) {
		const inUnit = (unit: 'mm' | 'cm' | 'in') => {
			const per = unit === 'in' ? 25.4 : unit === 'cm' ? 10 : 1;
			const scaled = (value: unknown): unknown => typeof value === 'number' ? value / per
				: typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, plain.has(k) ? v : scaled(v)])) : value;
			const issues: Issue[] = [];
			const read = readTiered(Fields.of(scaled(skirt), 'skirt', unit, issues)!, true);
			// What lies outside the limits is refused in every unit alike.
			return read ? draftTiered(body, read) : { ok: false, issues } as const;
		};
		const mm = inUnit('mm');
		for (const unit of ['cm', 'in'] as const) {
			const other = inUnit(unit);
			if (!mm.ok || !other.ok) {
				expect(other.ok ? [] : other.issues.map(({ code, path }) => [code, path])).toEqual(mm.ok ? [] : mm.issues.map(({ code, path }) => [code, path]));
				continue;
			}
			const { tiers, ...rest } = mm.value.figures;
			for (const [name, figure] of Object.entries(rest)) near(other.value.figures[name as keyof typeof rest]!, figure, 1e-6);
			tiers.forEach((tier, i) => {
				for (const [name, figure] of Object.entries(tier)) near(other.value.figures.tiers[i]![name as keyof typeof tier], figure, 1e-6);
			});
			const told = ({ checks }: TieredDraft) => checks.map(({ code, severity, about, waysOut }) => [code, severity, about, waysOut.length]);
			expect(told(other.value)).toEqual(told(mm.value));
		}
	}
});

test('Drafting leaves its input untouched', () => {
	for (const one of cases(200, 49)) {
		const before = structuredClone(one);
		draftTiered(one.body, one.skirt);
		expect(one).toEqual(before);
	}
});
