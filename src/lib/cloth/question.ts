// The boundary of a layout: anything at all → a question in millimetres and radians, or every issue at once. cm and degrees in.
import { bounds } from '../drafting/geometry/measure.ts';
import { crossesItself } from '../drafting/geometry/crossing.ts';
import type { Point } from '../drafting/geometry/point.ts';
import { brief, Fields } from '../drafting/fields.ts';
import { ok, refuse, type Issue, type Result } from '../drafting/result.ts';
import type { Cloth, ClothPiece, Place, Question } from './cloth.ts';
import { leastDepth } from './family.ts';
import { waysToLie } from './problem.ts';
import { outlineOf, polygonOutline, type Shape } from './shape.ts';

/** Least and most, mm (common practice, no source): they catch slips by ten and by a unit. */
const limits = { width: [50, 10_000], length: [50, 20_000], side: [1, 10_000], radius: [0, 10_000], place: [0, 20_000], strip: [0, 200], gap: [0, 200] } as const;
/** Of all pieces together: more are no skirt, and no layout of them is proved in any useful time. */
export const mostPieces = 60;
const mostPlaces = 20;
const mostCorners = 400;

export function checkQuestion(value: unknown): Result<Question> {
	const top = Fields.of(value, '', 'cm');
	if (!top) return refuse({ code: 'not-an-object', path: '', expected: 'object', received: brief(value) });
	const { issues } = top;
	const folded = top.yes('folded', false);
	const cloth = readCloth(top.group('cloth', { unit: 'cm', issues }, 'required'), folded ?? false);
	const nap = top.yes('nap', false);
	const find = top.word('find', ['length', 'outer'], 'length');
	const gap = top.length('gap', 0, limits.gap);
	const seconds = top.number('seconds', [0.05, 600], 5);
	const pieces = readPieces(top, nap ?? false, find === 'outer');
	top.unknown();
	if (issues.length > 0 || !cloth || !pieces || gap === undefined || seconds === undefined || find === undefined) return refuse(...issues);
	const question: Question = { cloth, pieces, gap, seconds, find };
	const against = obstacles(question);
	return against.length > 0 ? refuse(...against) : ok(question);
}

function readCloth(fields: Fields | null | undefined, folded: boolean): Cloth | undefined {
	if (!fields) return undefined;
	const width = fields.length('width', 'required', limits.width);
	const length = fields.isNull('length') ? undefined : fields.length('length', undefined, limits.length);
	const unusable = listOf(fields, 'unusable', mostPlaces, (place): Place | undefined => {
		const [x, y] = [place.length('x', 'required', limits.place), place.length('y', 'required', limits.place)];
		const [along, across] = [place.length('length', 'required', limits.place), place.length('width', 'required', limits.place)];
		place.unknown();
		return x === undefined || y === undefined || along === undefined || across === undefined ? undefined : { x, y, length: along, width: across };
	});
	fields.unknown();
	if (width === undefined || !unusable) return undefined;
	// A place without a size spoils nothing.
	return { width, length: length ?? null, unusable: unusable.filter((place) => place.length > 0 && place.width > 0), folded };
}

/** Each item of a list as an object; undefined when any was refused. */
function listOf<T>(fields: Fields, name: string, most: number, read: (item: Fields) => T | undefined): readonly T[] | undefined {
	const items = fields.items(name);
	if (items === undefined) return undefined;
	if ((items?.length ?? 0) > most) {
		fields.issues.push({ code: 'list-too-long', path: fields.pathOf(name), expected: most, received: items?.length });
		return undefined;
	}
	const values = (items ?? []).map((item, i) => {
		const path = fields.pathOf(`${name}.${i}`);
		const one = Fields.of(item, path, 'cm', fields.issues);
		if (!one) fields.issues.push({ code: 'not-an-object', path, expected: 'object', received: brief(item) });
		return one ? read(one) : undefined;
	});
	const known = values.filter((one) => one !== undefined);
	return known.length === values.length ? known : undefined;
}

function readPieces(top: Fields, nap: boolean, outerAsked: boolean): readonly ClothPiece[] | undefined {
	const pieces = listOf(top, 'pieces', mostPieces, (fields) => readPiece(fields, nap, outerAsked));
	if (!pieces) return undefined;
	if (pieces.length === 0) top.issues.push({ code: 'no-pieces', path: 'pieces', expected: 'a piece or more', received: 0 });
	const count = pieces.reduce((total, piece) => total + piece.count, 0);
	if (count > mostPieces) top.issues.push({ code: 'too-many-pieces', path: 'pieces', expected: mostPieces, received: count, figures: { most: mostPieces, count } });
	pieces.forEach(({ name }, i) => {
		if (pieces.findIndex((one) => one.name === name) < i) top.issues.push({ code: 'name-twice', path: `pieces.${i}.name`, expected: 'a name of its own', received: name });
	});
	return pieces;
}

function readPiece(fields: Fields, nap: boolean, outerAsked: boolean): ClothPiece | undefined {
	const name = fields.text('name', 64);
	const count = fields.whole('count', [1, 10_000], 1);
	const half = fields.yes('fold', false);
	const degrees = fields.list('turns');
	const shape = readShape(fields, outerAsked && name === 'panel');
	fields.unknown();
	if (degrees === 'refused' || !shape || name === undefined || count === undefined || half === undefined) return undefined;
	const turns = [...new Set(nap ? [0] : (degrees ?? [0]))];
	if (turns.length === 0 || turns.some((turn) => Math.abs(turn) > 360)) {
		fields.issues.push({ code: 'no-such-turn', path: fields.pathOf('turns'), expected: 'degrees from -360 to 360', received: turns.length === 0 ? 'none' : turns.find((turn) => Math.abs(turn) > 360) });
		return undefined;
	}
	if (half && turns.some((turn) => Math.abs(turn % 180) > 1e-9)) {
		fields.issues.push({ code: 'no-such-turn', path: fields.pathOf('turns'), expected: 'on the fold: 0 and 180', received: turns.find((turn) => Math.abs(turn % 180) > 1e-9) });
		return undefined;
	}
	const outline = outlineOf(shape, half);
	if (crossesItself(outline)) {
		fields.issues.push({ code: 'crosses-itself', path: fields.pathOf(''), expected: 'an outline that does not cross itself', received: name });
		return undefined;
	}
	return { name, count, shape, half, turns: turns.map((turn) => (turn * Math.PI) / 180) };
}

const shapes = ['sector', 'rectangle', 'gore', 'outline'] as const;

function readShape(fields: Fields, outerUnknown: boolean): Shape | undefined {
	const edgeOnGrain = fields.yes('edgeOnGrain', false);
	const within = { unit: 'cm', issues: fields.issues } as const;
	const points = fields.items('outline');
	const groups = { sector: fields.group('sector', within), rectangle: fields.group('rectangle', within), gore: fields.group('gore', within) };
	const given = [...Object.entries(groups).filter(([, group]) => group !== null).map(([name]) => name), ...(points === null ? [] : ['outline'])];
	if (given.length !== 1 || edgeOnGrain === undefined) {
		fields.issues.push({ code: 'one-shape', path: fields.pathOf(''), expected: shapes, received: given });
		return undefined;
	}
	if (groups.sector) return readSector(groups.sector, edgeOnGrain, outerUnknown);
	if (groups.rectangle) {
		const [length, width] = [groups.rectangle.length('length', 'required', limits.side), groups.rectangle.length('width', 'required', limits.side)];
		groups.rectangle.unknown();
		return length === undefined || width === undefined ? undefined : { kind: 'rectangle', length, width };
	}
	if (groups.gore) {
		const [top, bottom, length] = (['top', 'bottom', 'length'] as const).map((name) => groups.gore!.length(name, 'required', limits.side));
		groups.gore.unknown();
		return top === undefined || bottom === undefined || length === undefined ? undefined : { kind: 'gore', top, bottom, length };
	}
	return points ? readOutline(fields, points) : undefined;
}

function readSector(fields: Fields, edgeOnGrain: boolean, outerUnknown: boolean): Shape | undefined {
	const inner = fields.length('inner', 'required', limits.radius);
	// Where it is the unknown, a figure for it is no more than a guess.
	const outer = outerUnknown ? (fields.length('outer', 1000), (inner ?? 0) + leastDepth) : fields.length('outer', 'required', limits.side);
	const angle = fields.number('angle', [1, 360], 'required');
	const strip = fields.length('strip', 0, limits.strip);
	fields.unknown();
	if (inner === undefined || outer === undefined || angle === undefined || strip === undefined) return undefined;
	if (outer <= inner) {
		fields.issues.push({ code: 'radius-not-wider', path: fields.pathOf('outer'), expected: inner, received: outer, figures: { inner, outer } });
		return undefined;
	}
	return { kind: 'sector', inner, outer, angle: (angle * Math.PI) / 180, strip, edgeOnGrain };
}

function readOutline(fields: Fields, items: readonly unknown[]): Shape | undefined {
	const points = items.filter((item): item is Point => Array.isArray(item) && item.length === 2 && item.every((one) => typeof one === 'number' && Math.abs(one) <= 1000));
	if (points.length !== items.length || points.length < 3 || points.length > mostCorners) {
		fields.issues.push({ code: 'not-an-outline', path: fields.pathOf('outline'), expected: `3 to ${mostCorners} corners [x, y]`, received: items.length });
		return undefined;
	}
	const mm = points.map(([x, y]): Point => [x * 10, y * 10]).filter(([x, y], i, all) => { const [px, py] = all.at(i - 1)!; return Math.hypot(x - px, y - py) > 1e-6; });
	const twice = mm.reduce((total, [x, y], i) => total + mm.at(i - 1)![0] * y - x * mm.at(i - 1)![1], 0);
	if (Math.abs(twice) < 2) {
		fields.issues.push({ code: 'not-an-outline', path: fields.pathOf('outline'), expected: 'an area', received: Math.abs(twice) / 200 });
		return undefined;
	}
	return { kind: 'cut', outline: polygonOutline(twice > 0 ? mm : mm.toReversed()) };
}

/** What no layout can mend. */
function obstacles({ cloth, pieces, find }: Question): readonly Issue[] {
	const issues: Issue[] = [];
	const panel = pieces.find(({ name }) => name === 'panel');
	if (find === 'outer') {
		if (cloth.length === null) issues.push({ code: 'outer-needs-length', path: 'cloth.length', expected: 'length', received: null });
		if (panel?.shape.kind !== 'sector') issues.push({ code: 'outer-needs-panel', path: 'pieces', expected: 'a sector called panel', received: panel ? panel.shape.kind : null });
	}
	if (cloth.length !== null && cloth.unusable.some(({ x, y, length, width }) => x <= 0 && y <= 0 && x + length >= cloth.length! && y + width >= cloth.width)) {
		issues.push({ code: 'nothing-usable', path: 'cloth.unusable', expected: 'some cloth left', received: 'none' });
	}
	const width = cloth.folded ? cloth.width / 2 : cloth.width;
	pieces.forEach((piece, i) => {
		if (piece.half && !cloth.folded) issues.push({ code: 'fold-needs-folded', path: `pieces.${i}.fold`, expected: 'folded cloth', received: true });
		const boxes = waysToLie(piece, cloth.folded).map(({ outline }) => bounds(outline)).map(({ from, to }) => ({ along: to[0] - from[0], across: to[1] - from[1] }));
		const narrowest = Math.min(...boxes.map(({ across }) => across));
		if (narrowest > width + 1e-6) {
			issues.push({ code: 'wider-than-cloth', path: `pieces.${i}`, expected: width, received: narrowest, figures: { width, narrowest } });
			return;
		}
		const shortest = Math.min(...boxes.filter(({ across }) => across <= width + 1e-6).map(({ along }) => along));
		if (cloth.length !== null && shortest > cloth.length + 1e-6) {
			issues.push({ code: 'longer-than-cloth', path: `pieces.${i}`, expected: cloth.length, received: shortest, figures: { length: cloth.length, shortest } });
		}
	});
	return issues;
}
