// The same waist seam on four shares of a circle, all to one scale: how flare moves the radius.
import { polar, type Point } from '../../drafting/geometry/point.ts';
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing, Path, Shape } from '../drawing.ts';
import { num, type Unit } from './number.ts';
import { arcPath, area, stroke, words } from './shape.ts';

const SHARES = [
	{ share: 0.25, name: 'quarter' }, { share: 0.5, name: 'half' },
	{ share: 0.75, name: 'three-quarter' }, { share: 1, name: 'full' }
] as const;

/** Two by two, so that a phone holds them; the learner's own share has tape at its waist and a heavy line. */
export function sharesDiagram(draft: Draft, { unit }: { readonly unit: Unit }): Drawing {
	const { waistSeamGirth: girth, skirtLength: length } = draft.figures;
	const n = (mm: number): string => num(mm, unit);
	const shapes: Shape[] = [];
	const told: string[] = [];
	// Cells as wide as the widest of the four.
	const widest = Math.max(...SHARES.map(({ share }) => width(share, girth, length)));
	const cell = widest * 1.1;
	// Three lines of words under each, about 92 px, at the scale of a phone's drawing.
	const gap = (92 * 2 * cell) / 350;
	const rows = [Math.max(...SHARES.slice(0, 2).map((s) => height(s.share, girth, length))), Math.max(...SHARES.slice(2).map((s) => height(s.share, girth, length)))] as const;
	for (const [i, { share, name }] of SHARES.entries()) {
		const r = girth / (2 * Math.PI * share);
		const R = r + length;
		const half = Math.PI * share;
		const foot: Point = [(i % 2) * cell, i < 2 ? 0 : -(gap + rows[1])];
		// Each stands on its cell's foot.
		const corner: Point = [foot[0], foot[1] + R];
		const [from, to] = [-Math.PI / 2 - half, -Math.PI / 2 + half];
		const ring: Path = {
			start: polar(corner, R, from),
			edges: [
				{ name: 'hem', end: polar(corner, R, to), centre: corner, turn: 2 * half },
				{ name: 'seam', end: polar(corner, r, to), centre: null, turn: 0 },
				{ name: 'waist', end: polar(corner, r, from), centre: corner, turn: -2 * half },
				{ name: 'seam', end: polar(corner, R, from), centre: null, turn: 0 }
			]
		};
		const mine = Math.abs(share - draft.skirt.share) < 1e-6;
		shapes.push(area(ring, 'wrongSide', mine ? 'cut' : 'fine'));
		if (mine) shapes.push(stroke(arcPath(corner, r, from, to), 'cut', true));
		const middle = { anchor: 'middle' } as const;
		shapes.push(
			words(foot, name, mine ? 'labelStrong' : 'label', { ...middle, shift: [0, 22] }),
			words(foot, `radius ${n(r)}`, 'label', { ...middle, shift: [0, 43] }),
			words(foot, `hem ${n(2 * half * R)}`, 'label', { ...middle, shift: [0, 64] })
		);
		told.push(`${name}: radius ${n(r)}, hem ${n(2 * half * R)}`);
	}
	return {
		alt: `The same waist seam, ${n(girth)}, on four shares of a circle. ${told.join('; ')}. In ${unit === 'cm' ? 'centimetres' : 'inches'}.`,
		box: { from: [-cell / 2, -(gap + rows[1])], to: [cell * 1.5, rows[0]] },
		inkMargin: [6, 4, 72, 4], shapes
	};
}

function height(share: number, girth: number, length: number): number {
	const r = girth / (2 * Math.PI * share);
	return r + length - (share >= 0.5 ? (r + length) * Math.cos(Math.PI * share) : r * Math.cos(Math.PI * share));
}

function width(share: number, girth: number, length: number): number {
	const R = girth / (2 * Math.PI * share) + length;
	return share >= 0.5 ? 2 * R : 2 * R * Math.sin(Math.PI * share);
}
