// The SVG as readers that aren't ours find it: svgson reads its tree, svgpath its paths.
import { parseSync, type INode } from 'svgson';
import svgpath from 'svgpath';
import { describe, expect, it } from 'vitest';
import { lengthOf } from '../../src/lib/drafting/geometry/measure.ts';
import type { Outline } from '../../src/lib/drafting/geometry/outline.ts';
import type { Point } from '../../src/lib/drafting/geometry/point.ts';
import type { Piece } from '../../src/lib/drafting/piece.ts';
import type { AnyDraft } from '../../src/lib/drafting/style.ts';
import { boxOf } from '../../src/lib/paper/clip.ts';
import { cutterPieces } from '../../src/lib/paper/cutter.ts';
import { SVG_GROUPS, writeSvg } from '../../src/lib/paper/svg.ts';
import { seeded } from '../drafting/bodies.ts';
import { anyDraft, STYLES } from './any-draft.ts';
import { distanceTo } from './distance-to.ts';
import { ringDraft, sampleDraft } from './sample-draft.ts';

const options = { unit: 'cm', code: 'WREN & B', date: '2026-11-25', mark: '1a2b3c4d' } as const;
const written = (draft: AnyDraft, scale: 1 | 4 | 5 = 1): string =>
	writeSvg(cutterPieces(draft, { ...options, scale }), { title: 'A skirt <at true size>', lang: 'en-GB', size: scale === 1 ? 'true size' : `1 : ${scale}` });

const all = (node: INode): readonly INode[] => [node, ...node.children.flatMap(all)];
const paths = (group: INode): readonly string[] => all(group).flatMap(({ name, attributes }) => (name === 'path' ? [attributes.d!] : []));

/** A path's points in mm, arcs as the cubics that svgpath makes of them, read at 64 places; y up. */
function pointsOf(d: string): readonly Point[] {
	const points: Point[] = [];
	svgpath(d).abs().unshort().unarc().iterate((segment, _index, x, y) => {
		const [kind, ...n] = segment as unknown as [string, ...number[]];
		if (kind === 'M' || kind === 'L') points.push([n[0]!, -n[1]!]);
		else if (kind === 'C') {
			for (let i = 1; i <= 64; i++) {
				const [t, u] = [i / 64, 1 - i / 64];
				const on = (from: number, a: number, b: number, to: number): number => u ** 3 * from + 3 * u * u * t * a + 3 * u * t * t * b + t ** 3 * to;
				points.push([on(x, n[0]!, n[2]!, n[4]!), -on(y, n[1]!, n[3]!, n[5]!)]);
			}
		} else if (kind === 'Z') points.push(points[0]!);
		else throw new Error(`a segment ${kind}`);
	});
	return points;
}
const lengthAlong = (points: readonly Point[]): number => points.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - points[i]![0], y - points[i]![1]), 0);
const round = (outline: Outline): number => [...new Set(outline.edges.map(({ name }) => name))].reduce((sum, name) => sum + lengthOf(outline, name), 0);

/** An outline where its group lies: middle down where the piece has arcs, its upper left at `corner`. */
function laid(piece: Piece, outline: Outline, corner: Point): Outline {
	const turn = ([x, y]: Point): Point => (piece.cut.edges.some(({ centre }) => centre) ? [y, -x] : [x, y]);
	const turned = ({ start, edges }: Outline): Outline => ({ start: turn(start), edges: edges.map((e) => ({ ...e, end: turn(e.end), centre: e.centre && turn(e.centre) })) });
	const { from, to } = boxOf([turned(piece.cut)]);
	const move = ([x, y]: Point): Point => [x - from[0] + corner[0], y - to[1] + corner[1]];
	const { start, edges } = turned(outline);
	return { start: move(start), edges: edges.map((e) => ({ ...e, end: move(e.end), centre: e.centre && move(e.centre) })) };
}

const random = seeded(1);
const cases = [
	...STYLES.flatMap((style) => [1, 2, 3, 4].map((n) => ({ what: `${style} ${n}, drawn by lot`, draft: anyDraft(random, style) }))),
	{ what: 'a ring', draft: ringDraft() as AnyDraft }, { what: 'two panels', draft: sampleDraft({ panels: 2 }) as AnyDraft }
];

describe('the SVG', () => {
	it.each(cases)('holds each piece in millimetres, its lines in named groups and within 0.05 mm: $what', ({ draft }) => {
		const svg = parseSync(written(draft));
		const [, , width, height] = svg.attributes.viewBox!.split(' ').map(Number);
		// A user unit is a millimetre.
		expect([svg.attributes.width, svg.attributes.height]).toEqual([`${width}mm`, `${height}mm`]);
		const pieces = svg.children.filter(({ attributes }) => attributes.id?.startsWith('piece-'));
		expect(pieces).toHaveLength(draft.pieces.length);
		for (const [i, group] of pieces.entries()) {
			const piece = draft.pieces[i]!;
			const part = (name: (typeof SVG_GROUPS)[number]): readonly string[] => group.children.filter(({ attributes }) => attributes.class === name).flatMap(paths);
			const cut = part('cut').map(pointsOf);
			const corner: Point = [Math.min(...cut[0]!.map((p) => p[0])), Math.max(...cut[0]!.map((p) => p[1]))];
			const lines = [['cut', cut, [piece.cut, ...(piece.hole ? [piece.hole.cut] : [])]], ['stitch', part('stitch').map(pointsOf), [piece.stitch, ...(piece.hole ? [piece.hole.stitch] : [])]]] as const;
			for (const [name, drawn, outlines] of lines) {
				expect(drawn.length, name).toBe(outlines.length);
				for (const [k, outline] of outlines.entries()) {
					const at = laid(piece, outline, corner);
					for (const point of drawn[k]!) expect(distanceTo(at, point)).toBeLessThan(0.05);
					expect(Math.abs(lengthAlong(drawn[k]!) - round(outline)), name).toBeLessThan(0.05 + round(outline) * 1e-4);
				}
			}
			expect(part('mirror')).toHaveLength(piece.fold ? (piece.hole ? 2 : 1) : 0);
			expect(part('fold')).toHaveLength(piece.lines?.length ?? 0);
			expect(part('grain').length).toBeGreaterThan(0);
			const texts = all(group).flatMap((node) => (node.type === 'text' ? [node.value] : []));
			expect(texts.join(' ')).toContain('draft 1a2b3c4d');
		}
	});
	it('draws an arc as an arc, so that it is as true as three decimals', () => {
		expect(written(sampleDraft())).toMatch(/A\d+(\.\d{1,3})? \d+(\.\d{1,3})? 0 0 [01] /);
	});
	it('has a square to measure, every id once, and nothing outside its box', () => {
		for (const draft of [sampleDraft(), ringDraft()]) {
			const svg = parseSync(written(draft));
			const ids = all(svg).flatMap(({ attributes }) => (attributes?.id ? [attributes.id] : []));
			expect(new Set(ids).size).toBe(ids.length);
			for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9-]*$/);
			const [, , width, height] = svg.attributes.viewBox!.split(' ').map(Number) as [number, number, number, number];
			for (const d of paths(svg).filter((d) => !d.includes('h'))) for (const [x, y] of pointsOf(d)) expect(x >= 0 && x <= width && -y >= 0 && -y <= height).toBe(true);
			const [square] = paths(svg.children.find(({ attributes }) => attributes.id === 'check')!);
			expect(square).toBe('M20 20h100v100h-100Z');
		}
	});
	it('says what it is in its title, with letters that mean something to XML told apart', () => {
		const svg = parseSync(written(sampleDraft()));
		expect(svg.children.find(({ name }) => name === 'title')?.children[0]?.value).toMatch(/A skirt (<|&lt;)at true size(>|&gt;)/);
		expect(svg.attributes['xml:lang']).toBe('en-GB');
		expect(written(sampleDraft())).toContain('WREN &amp; B');
	});
	it('is a quarter of it at 1 : 4, and says so', () => {
		const [one, four] = ([1, 4] as const).map((scale) => paths(parseSync(written(sampleDraft(), scale)).children.find(({ attributes }) => attributes.id === 'piece-panel')!).map(pointsOf));
		expect(lengthAlong(four![0]!) * 4).toBeCloseTo(lengthAlong(one![0]!), 1);
		expect(written(sampleDraft(), 4)).toContain('1 : 4, for practice');
	});
});
