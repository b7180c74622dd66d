// The boundary for readings on the real thing: anything at all → readings in millimetres, or every issue at once.
import { brief, Fields, type Within } from '../fields.ts';
import type { Unit } from '../length.ts';
import { ok, refuse, type Issue, type Result } from '../result.ts';
import { floorPlaces, readingIssues, type AsMade, type FloorReading } from './reading.ts';

/** 10 m: no reading on a skirt is longer, and a slip by a hundred shows. mm (common practice, no source) */
const range = [0, 10_000] as const;
const lengths = [
	'radiusDrawn', 'waistEdgeAfterStaystitch', 'waistSeamAfterSewing', 'zipBought', 'hemAbove', 'nickDepth', 'panelLength', 'bandLength', 'liningWaist', 'bandWanted'
] as const;

/** A whole bolt, mm. */
const bolt = [0, 100_000] as const;

/** `value` is what stands at `asMade`; bare numbers are in `unit`. */
export function checkAsMade(value: unknown, unit: Unit): Result<AsMade> {
	const issues: Issue[] = [];
	const within: Within = { unit, issues };
	// The places are a list, so they are read by themselves.
	const held = typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : value;
	const floor = typeof held === 'object' && held !== null && 'floor' in held ? readFloor(held.floor, within) : undefined;
	if (typeof held === 'object' && held !== null && 'floor' in held) delete held.floor;
	const fields = Fields.of(held, 'asMade', unit, issues);
	if (!fields) return refuse({ code: 'not-an-object', path: 'asMade', expected: 'object', received: brief(value) });
	const made: { -readonly [Name in keyof AsMade]: AsMade[Name] } = {};
	for (const name of lengths) {
		const mm = fields.length(name, undefined, range);
		if (mm !== undefined) made[name] = mm;
	}
	const above = fields.length('liningAbove', undefined, [-range[1], range[1]]);
	if (above !== undefined) made.liningAbove = above;
	const cloth = fields.group('clothAfterWashing', within);
	const [width, length] = [cloth?.length('width', 'required', range), cloth?.length('length', 'required', bolt)];
	cloth?.unknown();
	if (width !== undefined && length !== undefined) made.clothAfterWashing = { width, length };
	if (floor) made.floor = floor;
	fields.unknown();
	if (issues.length > 0) return refuse(...issues);
	const slips = readingIssues(made);
	return slips.length > 0 ? refuse(...slips) : ok(made);
}

function readFloor(value: unknown, { unit, issues }: Within): readonly FloorReading[] | undefined {
	if (!Array.isArray(value) || value.length > floorPlaces.most) {
		issues.push({ code: 'floor-places', path: 'asMade.floor', expected: [floorPlaces.least, floorPlaces.most], received: Array.isArray(value) ? value.length : brief(value) });
		return undefined;
	}
	return value.map((one: unknown, i): FloorReading => {
		const fields = Fields.of(one, `asMade.floor.${i}`, unit, issues);
		if (!fields) issues.push({ code: 'not-an-object', path: `asMade.floor.${i}`, expected: 'object', received: brief(one) });
		const place = fields?.number('place', [0, 1], 'required');
		const distance = fields?.length('distance', 'required', range);
		fields?.unknown();
		return { place: place ?? 0, distance: distance ?? 0 };
	});
}
