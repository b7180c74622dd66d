import { expect, test } from 'vitest';
import { Fields } from '../../../src/lib/drafting/fields.ts';
import type { Issue } from '../../../src/lib/drafting/result.ts';
import { draftPleated, type PleatedDraft } from '../../../src/lib/drafting/pleated/draft.ts';
import { readPleated } from '../../../src/lib/drafting/pleated/input.ts';
import type { PleatedSkirt } from '../../../src/lib/drafting/pleated/skirt.ts';
import { seeded } from '../bodies.ts';
import { surveyed, walked } from '../measured.ts';
import { bent, bodies, casesOf, draftsOf, expectPairsMatch, expectSameInEveryUnit, expectSound, fewer, inUnitOf, near, takeAllWaysOn, takeAllWaysOut } from '../sound.ts';
import { anyPleated } from './pleats.ts';

const cases = (count: number, seed: number) => casesOf(count, seed, anyPleated);
const drafted = (count: number, seed: number): Iterable<PleatedDraft> => draftsOf(cases(count, seed), draftPleated);

test('No outline crosses itself, every one runs counterclockwise and closes, and every number is a number', () => {
	let looked = 0;
	for (const draft of drafted(bodies, 61)) {
		expectSound(draft);
		looked++;
	}
	// One body in five lacks a reading that pleats need.
	expect(looked).toBeGreaterThan(bodies * 0.6);
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
	for (const { pieces, seams, checks } of drafted(bodies, 65)) {
		expectPairsMatch({ pieces, seams });
		for (const { ease } of seams) if (ease !== 0) expect(ease).toBe(0);
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
	expect(takeAllWaysOut(drafted(Math.max(6000, bodies), 65), draftPleated)).toEqual([
		'hem-to-floor skirt.length', 'hip-fit skirt.hipEase', 'opening-longer-than-skirt skirt.length', 'pleats-overlap skirt.depth', 'stretch-cloth skirt.clothKind', 'stride skirt.depth', 'stride skirt.pleats',
		'taper-shallows skirt.depth', 'taper-shallows skirt.hipEase', 'taper-shallows skirt.pleats', 'taper-steep skirt.pleats', 'waist-bulk skirt.depth',
		'zip-allowance skirt.allowances.seam', 'zip-longer-than-skirt skirt.length'
	]);
});

test('Taking any way on from a refusal makes a skirt that can be cut, as far as that refusal goes', () => {
	const random = seeded(70);
	const refused = bent(cases(Math.max(2000, bodies), 67), ({ body, skirt }) => {
		const hardly: PleatedSkirt = {
			...skirt, length: skirt.length * (0.05 + random()), hem: 400 * random(), clothWidth: 300 + 300 * random(), depth: random() < 0.5 ? 5 + 10 * random() : skirt.depth,
			waistEase: 300 * random(), allowances: { waist: 15, seam: 100 * random() }
		};
		return { body, skirt: hardly };
	});
	expect(takeAllWaysOn(refused, draftPleated, (path) => !path.startsWith('body'))).toEqual([
		'band-deeper-than-length skirt.band.depth', 'hem-deeper-than-skirt skirt.hem', 'pleat-wider-than-cloth skirt.clothWidth', 'pleat-wider-than-cloth skirt.depth',
		'pleat-wider-than-cloth skirt.pleats', 'pleats-end-above-hip skirt.length', 'taper-eats-pleat skirt.depth', 'taper-eats-pleat skirt.hipEase', 'taper-eats-pleat skirt.pleats'
	]);
});

test('A change of unit changes nothing: not a figure, not a check', () => {
	expectSameInEveryUnit(cases(fewer, 68), ({ body, skirt }, unit) => {
		const issues: Issue[] = [];
		const read = readPleated(Fields.of(inUnitOf(skirt, unit, ['pleats']), 'skirt', unit, issues)!, { unit, issues });
		// What lies outside the limits is refused in every unit alike.
		return read ? draftPleated(body, read) : { ok: false, issues };
	}, () => 1e-6);
});

test('Drafting leaves its input untouched', () => {
	for (const one of cases(200, 69)) {
		const before = structuredClone(one);
		draftPleated(one.body, one.skirt);
		expect(one).toEqual(before);
	}
});
