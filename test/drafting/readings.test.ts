// What a draft says of the readings themselves, of the floor and of stretching cloth: alike for every style.
import { expect, test } from 'vitest';
import type { Body } from '../../src/lib/drafting/body.ts';
import type { Check } from '../../src/lib/drafting/check.ts';
import { readingChecks } from '../../src/lib/drafting/checks/readings.ts';
import { checkAnyInput, draftAny } from '../../src/lib/drafting/style.ts';
import { checkSentence } from '../../src/lib/ui/wording/check.ts';
import { ansurBody, nhanesBody, seeded } from './bodies.ts';

const styles = {
	flared: { style: 'flared', share: 0.5, length: 70 },
	tiered: { style: 'tiered', length: 70 },
	pleated: { style: 'pleated', length: 70 }
} as const;
const body = { waist: 74, hip: 99, waistToHip: 20 };
function draft(who: object, choices: object = {}, style: keyof typeof styles = 'flared', unit = 'cm') {
	const input = checkAnyInput({ unit, body: { ...body, ...who }, skirt: { ...styles[style], ...choices } });
	const drafted = input.ok ? draftAny(input.value.body, input.value.skirt) : input;
	return drafted.ok ? drafted.value : { issues: drafted.issues };
}
const told = (...of: Parameters<typeof draft>): readonly Check[] => {
	const drafted = draft(...of);
	if ('issues' in drafted) throw new Error(JSON.stringify(drafted.issues));
	return drafted.checks as readonly Check[];
};
const issuesOf = (...of: Parameters<typeof draft>) => {
	const drafted = draft(...of);
	return 'issues' in drafted ? drafted.issues.map(({ code, path }) => `${path}: ${code}`) : [];
};
const slips = ['readings-apart', 'slip-by-ten', 'units-mixed', 'digits-swapped'];
const ofReadings = (checks: readonly Check[]) => checks.filter(({ code }) => slips.includes(code)).map(({ code, severity, about }) => [code, severity, about]);

test.for(Object.keys(styles) as (keyof typeof styles)[])('Of a %s skirt two readings that agree are used by their mean, and two that don’t stop it', (style) => {
	const drafted = draft({ waist: [74, 74.6], hip: ['99 cm', '38 1/2 in', 98.4] }, {}, style);
	if ('issues' in drafted) throw new Error(JSON.stringify(drafted.issues));
	// (74 + 74.6) / 2; 38.5 in are 97.79 cm, and its neighbour 98.4 is the nearer: (97.79 + 98.4) / 2. The newest pairs with whichever is closest.
	expect(drafted.body.waist).toBeCloseTo(743, 9);
	expect(drafted.body.hip).toBeCloseTo((990 + 984) / 2, 9);
	expect(ofReadings(drafted.checks as readonly Check[])).toEqual([]);
	expect(ofReadings(told({ waist: [74, 75.1] }, {}, style))).toEqual([['readings-apart', 'stop', 'waist']]);
	expect(ofReadings(told({ waist: [74, 75] }, {}, style))).toEqual([]);
});

test('A reading is refused in a list as it would be alone, and a list holds one to ten', () => {
	expect(issuesOf({ waist: [74, 'about 75'] })).toEqual(['body.waist: not-a-length']);
	expect(issuesOf({ waist: [74, 7] })).toEqual(['body.waist: length-out-of-range']);
	expect(issuesOf({ waist: [] })).toEqual(['body.waist: readings-count']);
	expect(issuesOf({ waist: Array.from({ length: 11 }, () => 74) })).toEqual(['body.waist: readings-count']);
	expect(issuesOf({ waist: Array.from({ length: 10 }, () => 74) })).toEqual([]);
	expect(issuesOf({ waist: [[74]] })).toEqual(['body.waist: not-a-length']);
	expect(issuesOf({ waistToFloor: 20 })).toEqual(['body.waistToFloor: length-out-of-range']);
	// One reading in a list is one reading.
	expect(draft({ waist: [74] })).toEqual(draft({}));
});

test('A slip beside an earlier reading is named with what may have been meant', () => {
	const slip = (who: Body) => readingChecks(who).filter(({ code }) => code !== 'readings-apart').map(({ code, severity, about, figures }) => [code, severity, about, Math.round(figures.guess! * 10) / 10]);
	expect(slip({ waist: 1829, readings: { waist: [720, 1829] } })).toEqual([['units-mixed', 'caution', 'waist', 720.1]]);
	expect(slip({ waist: 740, waistToFloor: 1010, readings: { waistToFloor: [101, 1010] } })).toEqual([['slip-by-ten', 'caution', 'waistToFloor', 101]]);
	// 72.5 and 75.2 cm; 28.5 and 25.8 in.
	expect(slip({ waist: 752, readings: { waist: [725, 752] } })).toEqual([['digits-swapped', 'caution', 'waist', 725]]);
	expect(slip({ waist: 25.8 * 25.4, readings: { waist: [28.5 * 25.4, 25.8 * 25.4] } })).toEqual([['digits-swapped', 'caution', 'waist', 723.9]]);
});

test('Waist and hip more than twice one another were read in two units; a rare one by itself is only noted', () => {
	// 99 cm against 48: 2.54 times 48 is 121.9. The other way, 120 against 59: 59 × 2.54 = 149.9, or 120 / 2.54 = 47.2.
	expect(readingChecks({ waist: 490, hip: 990 })).toMatchObject([{ code: 'units-mixed', severity: 'caution', about: 'waist', figures: { guess: 490 * 2.54, beside: 990 } }]);
	expect(readingChecks({ waist: 1200, hip: 590 })).toMatchObject([{ code: 'units-mixed', severity: 'caution', about: 'waist', figures: { guess: 1200 / 2.54, beside: 590 } }]);
	expect(readingChecks({ waist: 490, hip: 980 })).toEqual([]);
	// Three SDs over the mean of NHANES women are 164 cm: from there on it is a question, not a fault.
	expect(readingChecks({ waist: 1700, hip: 1650 })).toMatchObject([{ code: 'units-mixed', severity: 'note', about: 'waist' }, { code: 'units-mixed', severity: 'note', about: 'hip' }]);
	expect(readingChecks({ waist: 1600, hip: 1640 })).toEqual([]);
	expect(readingChecks({ waist: 1000, hip: 960 })).toEqual([]);
});

test('What may have been meant, taken instead, is asked about no more', () => {
	const random = seeded(201);
	const met = new Set<string>();
	for (let i = 0; i < 4000; i++) {
		const who: Body = i % 2 ? ansurBody(random) : nhanesBody(random);
		const name = (['waist', 'hip', 'waistToHip'] as const)[i % 3]!;
		const by = [2.54, 1 / 2.54, 10, 0.1][Math.floor(4 * random())]!;
		// What is rare as it stands stays a note.
		if (readingChecks(who).length > 0) continue;
		const slipped: Body = { ...who, [name]: who[name]! * by, ...(random() < 0.5 && { readings: { [name]: [who[name]!, who[name]! * by] } }) };
		for (const { code, about, figures } of readingChecks(slipped)) {
			if (code === 'readings-apart' || about !== name) continue;
			const { readings, ...alone } = { ...slipped, [name]: figures.guess! };
			const left = readingChecks(readings ? { ...alone, readings: { [name]: [figures.earlier!, figures.guess!] } } : alone).filter((check) => check.about === name && check.code !== 'readings-apart');
			// Waist against hip can't tell which of the two was misread: the other may be asked about then.
			if (figures.beside === undefined || figures.earlier !== undefined) expect([slipped, code, left]).toEqual([slipped, code, []]);
			// A slip from the true reading is put right to the true reading.
			if (figures.earlier !== undefined) expect(figures.guess).toBeCloseTo(who[name]!, 6);
			met.add(`${code} ${figures.earlier === undefined ? 'alone' : 'beside'}`);
		}
	}
	expect([...met].sort()).toEqual(['slip-by-ten alone', 'slip-by-ten beside', 'units-mixed alone', 'units-mixed beside']);
});

test('Readings typed in another unit say the same of themselves', () => {
	const random = seeded(202);
	let said = 0;
	for (let i = 0; i < 600; i++) {
		const who = ansurBody(random);
		const swapped = who.waist * [1, 1.005, 1.02, 2.54, 10, 0.1, 0.5][i % 7]!;
		const given = { waist: [who.waist, swapped], hip: who.hip, waistToHip: who.waistToHip };
		const inUnit = (unit: 'mm' | 'cm' | 'in') => {
			const per = { mm: 1, cm: 10, in: 25.4 }[unit];
			const drafted = draft({ waist: given.waist.map((mm) => mm / per), hip: given.hip / per, waistToHip: given.waistToHip / per }, { length: 700 / per }, 'flared', unit);
			return 'issues' in drafted ? drafted.issues.map(({ code }) => code) : ofReadings(drafted.checks as readonly Check[]);
		};
		const mm = inUnit('mm');
		said += mm.length;
		expect([inUnit('cm'), inUnit('in')]).toEqual([mm, mm]);
	}
	expect(said).toBeGreaterThan(100);
});

test.for(Object.keys(styles) as (keyof typeof styles)[])('The hem of a %s skirt is held against the floor where that was read, and 25 mm off it is the least', (style) => {
	const floor = (waistToFloor: number, choices: object = {}) => told({ waistToFloor }, choices, style).find(({ code }) => code === 'hem-to-floor');
	expect(told({}, {}, style).some(({ code }) => code === 'hem-to-floor')).toBe(false);
	// The band, 4 cm, stands above the waist line: 104 + 4 − 70 = 38 cm off the floor.
	expect(floor(104)).toMatchObject({ severity: 'good', figures: { clear: 380, waistToFloor: 1040, length: 700 } });
	expect(floor(104, { length: 105.5 })?.severity).toBe('good');
	expect(floor(104, { length: 105.6 })).toMatchObject({ severity: 'caution', waysOut: [{ path: 'skirt.length', value: expect.closeTo(1055, 9) }] });
	expect(checkSentence(floor(104, { length: 107 })!, 'cm')).toBe('The hem is only 10 mm off the floor. Someone can tread on it and fall; 25 mm clear is safer.');
	expect(checkSentence(floor(104, { length: 109 })!, 'cm')).toBe('The skirt is 1.0 cm longer than it is to the floor. Someone can tread on it and fall; 25 mm clear is safer.');
});

test('Where the band sits moves the hem against the floor by as much', () => {
	const clear = (sits: string) => told({ waistToFloor: 104 }, { band: { kind: 'straight', depth: 4, sits } }).find(({ code }) => code === 'hem-to-floor')?.figures.clear;
	// A finished length runs from the band's top edge, which lies 4, 2 or 0 cm above the waist line.
	expect([clear('above'), clear('centred'), clear('below')]).toEqual([380, 360, 340]);
});

test.for(Object.keys(styles) as (keyof typeof styles)[])('Cloth that stretches is a caution on a %s skirt, and woven cloth the way out', (style) => {
	const cloth = (choices: object) => told({}, choices, style).filter(({ code }) => code.endsWith('-cloth')).map(({ code, severity, waysOut }) => [code, severity, waysOut]);
	expect(cloth({})).toEqual([['woven-cloth', 'note', []]]);
	expect(cloth({ clothKind: 'woven' })).toEqual(cloth({}));
	expect(cloth({ clothKind: 'stretch' })).toEqual([['stretch-cloth', 'caution', [{ path: 'skirt.clothKind', value: 'woven' }]]]);
	expect(issuesOf({}, { clothKind: 'wool' }, style)).toEqual(['skirt.clothKind: not-one-of']);
});
