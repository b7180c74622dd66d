import { expect, test } from 'vitest';
import { askAbout, checkMeasurement, measurements } from '../../src/lib/drafting/measurement.ts';
import { nhanesBody, seeded } from './bodies.ts';

const asked = (...given: Parameters<typeof askAbout>) => askAbout(...given).map(({ code, figures }) => [code, figures.guess === undefined ? undefined : Math.round(figures.guess * 10) / 10]);

test('An ordinary reading is not asked about', () => {
	expect(askAbout('waist', 740, { unit: 'cm', earlier: [735], others: { hip: 990 } })).toEqual([]);
	expect(askAbout('length', 600, { unit: 'cm' })).toEqual([]);
});

test('A slip by ten is asked about, against what is usual and against an earlier reading', () => {
	expect(asked('length', 1690, { unit: 'cm' })).toEqual([['unusual', undefined]]);
	expect(asked('waistToHip', 60, { unit: 'cm' })).toEqual([['units-mixed', 152.4]]);
	// A number of centimetres in a field for inches comes out too large; in a field for centimetres it can't.
	expect(asked('waist', 1800, { unit: 'in', others: { hip: 990 } })).toEqual([['units-mixed', 708.7]]);
	expect(asked('waist', 1800, { unit: 'cm', others: { hip: 990 } })).toEqual([['unusual', undefined]]);
	expect(asked('length', 118, { unit: 'cm', earlier: [1150] })).toEqual([['slip-by-ten', 1180]]);
	expect(asked('length', 1180, { unit: 'cm', earlier: [118] })).toEqual([['slip-by-ten', 118]]);
});

test('Units that were mixed show as a ratio near 2.54, to an earlier reading or between waist and hip', () => {
	expect(asked('waist', 1829, { unit: 'cm', earlier: [720] })).toEqual([['units-mixed', 720.1]]);
	expect(asked('hip', 2490, { unit: 'in', earlier: [], others: { waist: 740 } })).toEqual([['units-mixed', 980.3]]);
	expect(asked('waist', 480, { unit: 'cm', others: { hip: 990 } })).toEqual([['units-mixed', 1219.2]]);
});

test('Digits that changed places are asked about', () => {
	expect(asked('waist', 752, { unit: 'cm', earlier: [725] })).toEqual([['digits-swapped', 725]]);
	expect(asked('hip', 1099, { unit: 'cm', earlier: [1009] })).toEqual([]);
	expect(asked('hip', 890, { unit: 'cm', earlier: [980] })).toEqual([['digits-swapped', 980]]);
	// 28.5 and 25.8 in.
	expect(asked('waist', 25.8 * 25.4, { unit: 'in', earlier: [28.5 * 25.4] })).toEqual([['digits-swapped', 723.9]]);
});

test('A waist larger than the hip is real: it is asked about and never refused', () => {
	expect(asked('waist', 1000, { unit: 'cm', others: { hip: 960 } })).toEqual([['waist-over-hip', undefined]]);
	expect(asked('hip', 960, { unit: 'cm', others: { waist: 1000 } })).toEqual([['waist-over-hip', undefined]]);
	expect(checkMeasurement('waist', 1000, '', 'cm').ok).toBe(true);
});

test('Hard limits only keep out what can’t be a person’s', () => {
	// The design's own limits: waist 30 to 250 cm, hip 40 to 250.
	expect(measurements.waist.limits).toEqual([300, 2500]);
	expect(measurements.hip.limits).toEqual([400, 2500]);
	const random = seeded(41);
	for (let i = 0; i < 5000; i++) {
		const { waist, hip } = nhanesBody(random);
		expect(checkMeasurement('waist', waist, '', 'cm').ok && checkMeasurement('hip', hip, '', 'cm').ok).toBe(true);
	}
	// NHANES: girls' waists at 6 years p5 and at 14 years p95, cm.
	for (const waist of [480, 1050]) expect([checkMeasurement('waist', waist, '', 'cm').ok, askAbout('waist', waist, { unit: 'cm' })]).toEqual([true, []]);
});

test('Few real bodies are asked anything', () => {
	const random = seeded(42);
	let askedOf = 0;
	for (let i = 0; i < 5000; i++) {
		const { waist, hip } = nhanesBody(random);
		if (askAbout('waist', waist, { unit: 'cm', others: { hip } }).some(({ code }) => code !== 'waist-over-hip')) askedOf++;
	}
	expect(askedOf / 5000).toBeLessThan(0.01);
});
