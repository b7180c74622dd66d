// The DXF as a reader that isn't ours finds it: dxf-parser, a general reader of the format from npm.
import DxfParser, { type IBlock, type IEntity, type IPoint, type IPolylineEntity, type IPointEntity, type ILineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { area, lengthOf } from '../../src/lib/drafting/geometry/measure.ts';
import type { Outline } from '../../src/lib/drafting/geometry/outline.ts';
import type { Piece } from '../../src/lib/drafting/piece.ts';
import type { AnyDraft } from '../../src/lib/drafting/style.ts';
import { cutterPieces } from '../../src/lib/paper/cutter.ts';
import { blockNames, writeDxf } from '../../src/lib/paper/dxf.ts';
import { seeded } from '../drafting/bodies.ts';
import { anyDraft, STYLES } from './any-draft.ts';
import { distanceTo } from './distance-to.ts';
import { ringDraft, sampleDraft } from './sample-draft.ts';

const options = { unit: 'cm', code: 'WREN B', date: '2026-11-25', mark: '1a2b3c4d', scale: 1 } as const;
const written = (draft: AnyDraft, scale: 1 | 4 | 5 = 1): string => writeDxf(cutterPieces(draft, { ...options, scale }), { style: 'a skirt', date: options.date });

const on = (block: IBlock, layer: string, type: string): readonly IEntity[] => block.entities.filter((entity) => entity.layer === layer && entity.type === type);
const rings = (block: IBlock, layer: string): readonly (readonly IPoint[])[] => on(block, layer, 'POLYLINE').map((ring) => {
	expect((ring as IPolylineEntity).shape, 'a closed run').toBe(true);
	return (ring as IPolylineEntity).vertices;
});
const perimeter = (ring: readonly IPoint[]): number => ring.reduce((sum, { x, y }, i) => sum + Math.hypot(x - ring.at(i - 1)!.x, y - ring.at(i - 1)!.y), 0);
/** Shoelace formula; counterclockwise is positive. */
const areaOf = (ring: readonly IPoint[]): number => ring.reduce((sum, { x, y }, i) => sum + (ring.at(i - 1)!.x * y - x * ring.at(i - 1)!.y) / 2, 0);
const round = (outline: Outline): number => [...new Set(outline.edges.map(({ name }) => name))].reduce((sum, name) => sum + lengthOf(outline, name), 0);

/** The piece as its block lies: middle down where it has arcs, as drawn otherwise. */
const laid = (piece: Piece, { start, edges }: Outline): Outline => {
	const turn = ([x, y]: readonly [number, number]): [number, number] => (piece.cut.edges.some(({ centre }) => centre) ? [y, -x] : [x, y]);
	return { start: turn(start), edges: edges.map((edge) => ({ ...edge, end: turn(edge.end), centre: edge.centre && turn(edge.centre) })) };
};

/** Every point within 0.05 mm of its line, the ends of chords among them, and the middle of each chord. */
function follows(ring: readonly IPoint[], outline: Outline): void {
	for (const [i, { x, y }] of ring.entries()) {
		const before = ring.at(i - 1)!;
		expect(distanceTo(outline, [x, y])).toBeLessThan(0.05);
		expect(distanceTo(outline, [(x + before.x) / 2, (y + before.y) / 2])).toBeLessThan(0.05);
	}
}

const random = seeded(6673);
const cases = [
	...STYLES.flatMap((style) => [1, 2, 3, 4].map((n) => ({ what: `${style} ${n}, drawn by lot`, draft: anyDraft(random, style) }))),
	{ what: 'a ring', draft: ringDraft() as AnyDraft }, { what: 'two panels', draft: sampleDraft({ panels: 2 }) as AnyDraft }
];

describe('the DXF', () => {
	it.each(cases)('has a block for each piece, with its lines on the layers of ASTM D6673, within 0.05 mm: $what', ({ draft }) => {
		const read = new DxfParser().parseSync(written(draft))!;
		const blocks = Object.values(read.blocks);
		expect(blocks.map(({ name }) => name)).toEqual(blockNames(draft.pieces.map(({ name }) => name)));
		expect(read.entities.filter(({ type }) => type === 'INSERT').map((insert) => (insert as IEntity & { name: string }).name)).toEqual(blocks.map(({ name }) => name));
		for (const [i, block] of blocks.entries()) {
			const piece = draft.pieces[i]!;
			expect(block.name).toMatch(/^[A-Z0-9_]{1,20}$/);
			const [[boundary], [cutOut], sewn] = [rings(block, '1'), rings(block, '11'), rings(block, '14')];
			follows(boundary!, laid(piece, piece.cut));
			// 0.05 mm all along a line shifts an area by that much of its length.
			expect(Math.abs(areaOf(boundary!) - area(piece.cut))).toBeLessThan(0.05 * round(piece.cut));
			// Chords within 0.02 mm of an arc are shorter by less than 0.03 % of it.
			expect(Math.abs(perimeter(boundary!) / round(piece.cut) - 1)).toBeLessThan(0.0003);
			follows(sewn[0]!, laid(piece, piece.stitch));
			if (piece.hole) {
				follows(cutOut!, laid(piece, piece.hole.cut));
				follows(sewn[1]!, laid(piece, piece.hole.stitch));
			} else expect(cutOut).toBeUndefined();
			expect(sewn).toHaveLength(piece.hole ? 2 : 1);
			// Grain must be there, and at the angle it has.
			const [grain] = on(block, '7', 'LINE') as readonly ILineEntity[];
			const [a, b] = grain!.vertices as [IPoint, IPoint];
			const drawn = laid(piece, { start: piece.grain.from, edges: [{ name: '', end: piece.grain.to, centre: null, turn: 0 }] });
			const [dx, dy] = [drawn.edges[0]!.end[0] - drawn.start[0], drawn.edges[0]!.end[1] - drawn.start[1]];
			expect(Math.abs((b.x - a.x) * dy - (b.y - a.y) * dx) / Math.hypot(dx, dy)).toBeLessThan(0.05);
			expect(on(block, '6', 'LINE')).toHaveLength(piece.fold ? (piece.hole ? 2 : 1) : 0);
			expect(on(block, '8', 'LINE')).toHaveLength(piece.lines?.length ?? 0);
			const edges = [laid(piece, piece.cut), ...(piece.hole ? [laid(piece, piece.hole.cut)] : [])];
			const notches = on(block, '4', 'POINT') as readonly IPointEntity[];
			expect(notches.length > 0).toBe(piece.notches.length > 0);
			for (const { position: { x, y } } of notches) expect(Math.min(...edges.map((edge) => distanceTo(edge, [x, y])))).toBeLessThan(0.05);
			// Every corner of a line is a turn point, and every other one a curve point.
			const corners = [boundary!, ...(cutOut ? [cutOut] : []), ...sewn].reduce((sum, ring) => sum + ring.length, 0);
			expect(on(block, '2', 'POINT').length + on(block, '3', 'POINT').length).toBe(corners);
			const texts = (on(block, '1', 'TEXT') as readonly ITextEntity[]).map(({ text }) => text);
			expect(texts).toEqual([`PIECE NAME: ${block.name}`, `QUANTITY: ${piece.count}`, `MATERIAL: ${piece.cloth}`]);
		}
	});
	it('says at the end of the drawing what it is, its day and its unit', () => {
		const read = new DxfParser().parseSync(written(sampleDraft()))!;
		expect(read.header.$ACADVER).toBe('AC1009');
		expect(read.entities.flatMap((entity) => (entity.type === 'TEXT' ? [(entity as ITextEntity).text] : []))).toEqual(['STYLE NAME: a skirt', 'CREATION DATE: 2026-11-25', 'UNITS: METRIC']);
	});
	it('is a quarter or a fifth of it at scale, and says so', () => {
		const one = Object.values(new DxfParser().parseSync(written(sampleDraft()))!.blocks)[0]!;
		for (const scale of [4, 5] as const) {
			const small = Object.values(new DxfParser().parseSync(written(sampleDraft(), scale))!.blocks)[0]!;
			expect(perimeter(rings(small, '1')[0]!) * scale).toBeCloseTo(perimeter(rings(one, '1')[0]!), 0);
			expect((on(small, '15', 'TEXT') as readonly ITextEntity[]).map(({ text }) => text).join(' ')).toContain(`1 : ${scale}, for practice`);
		}
	});
	it('is plain ASCII with two decimals, each code and value on a line of its own', () => {
		const text = writeDxf(cutterPieces(sampleDraft(), { ...options, code: 'WREN É' }), { style: 'half circle', date: options.date });
		expect(text).toMatch(/^[\x0d\x0a\x20-\x7e]*$/);
		const lines = text.split('\r\n');
		expect(lines.at(-1)).toBe('');
		const pairs = Array.from({ length: (lines.length - 1) / 2 }, (_, i) => [Number(lines[2 * i]), lines[2 * i + 1]!] as const);
		for (const [code, value] of pairs) if (code >= 10 && code < 60) expect(value).toMatch(/^-?\d+\.\d\d$/);
		expect(text).toContain('WREN E');
	});
	it('keeps names apart when they are cut to 20 letters', () => {
		expect(blockNames(['a very long name of a piece 1', 'a very long name of a piece 2', 'Band'])).toEqual(['A_VERY_LONG_NAME_OF_', 'A_VERY_LONG_NAME_O_2', 'BAND']);
	});
});
