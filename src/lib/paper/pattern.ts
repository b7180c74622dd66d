// A piece of the pattern with what the cutter needs to read on it: half of it where it lies on a fold, or whole.
import type { Outline } from '../drafting/geometry/outline.ts';
import { add, scale as scaledPoint, type Point } from '../drafting/geometry/point.ts';
import { pointAlongRun, runOf } from '../drafting/geometry/run.ts';
import type { AnyDraft } from '../drafting/style.ts';
import { boxOf } from './clip.ts';
import { viewPanel } from './diagrams/panel.ts';
import { num, numUnit } from './diagrams/number.ts';
import { area, stroke, words } from './diagrams/shape.ts';
import type { Drawing, Shape } from './drawing.ts';
import { spellDate } from './page.ts';
import { foldLine, foldsOf, grainLine, grainShown, innerLines, mirrorLines, onLayer } from './pattern-line.ts';
import { edgesIn, notchShapes } from './pattern-notch.ts';
import { countWords, pieceTitle, sizeWords, skirtWords, type PatternPiece, type Scale } from './pattern-piece.ts';
import { scaledDrawing } from './scaled.ts';

export interface PatternOptions {
	readonly unit: 'cm' | 'in';
	/** A class code and a learner's initial, never a name. */
	readonly code: string;
	/** `2026-11-25` */
	readonly date: string;
	/** Tells sheets of one draft from those of another; it stands for what is printed and nothing else. */
	readonly mark: string;
	readonly scale: Scale;
}

/** Middle down, half of it where it lies on a fold; a band as it is, along the sheet. `whole` for a cutter: never half. */
export function patternDrawing(pattern: PatternPiece, draft: AnyDraft, options: PatternOptions, whole = false): Drawing {
	const { piece } = pattern;
	const folded = !whole && piece.fold !== null && Math.abs(piece.fold.from[1]) < 1e-9 && Math.abs(piece.fold.to[1]) < 1e-9;
	const middleDown = folded || piece.cut.edges.some((edge) => edge.centre);
	const turn = (p: Point): Point => (middleDown ? [p[1], 0 - p[0]] : p);
	const turned = (outline: Outline): Outline =>
		({ start: turn(outline.start), edges: outline.edges.map((e) => ({ ...e, end: turn(e.end), centre: e.centre && turn(e.centre) })) });
	const shapes: Shape[] = [];
	if (folded) {
		const view = viewPanel(piece, true);
		shapes.push(area(view.cloth, 'paper'), ...view.stitch.map(({ path }) => stroke(path, 'stitch')), ...view.cut.map(({ path }) => stroke(path, 'cut')));
		for (const [from, to] of foldsOf(piece)) shapes.push(...foldLine(turn(from), turn(to)));
	} else {
		shapes.push(area(middleDown ? viewPanel(piece, false).cloth : piece.cut, 'paper'), area(turned(piece.stitch), 'none', 'stitch'), area(turned(piece.cut), 'none', 'cut'));
		if (piece.hole) shapes.push(...onLayer('hole', [area(turned(piece.hole.stitch), 'none', 'stitch'), area(turned(piece.hole.cut), 'none', 'cut')]));
		shapes.push(...mirrorLines(piece, turn));
	}
	shapes.push(...grainLine(piece, folded, turn), ...innerLines(piece, folded, turn));
	// A smooth curve is many edges of one name, and is told once.
	for (const name of new Set(edgesIn(piece, 'stitch').map(({ edge }) => edge.name))) {
		const run = runOf(piece.stitch.edges.some((edge) => edge.name === name) ? piece.stitch : piece.hole!.stitch, name);
		const inner = [folded ? 0.3 : 0.5, 0.7].map((part) => pointAlongRun(run, part)).find(([, y]) => !folded || y > 0);
		const says = name === 'waist' ? 'waist stitch line' : name === 'hem' ? 'hem fold line' : 'stitch line';
		if (inner) shapes.push(words(turn(inner), says, 'small', { anchor: 'middle' }));
	}
	shapes.push(...notchShapes(piece, folded, turn));

	const box = boxOf(shapes.flatMap((shape) => (shape.shape === 'path' ? [shape.path] : [])));
	// The block of words stands by the fold or the middle, a ring's by its grain; the tiler moves it to a sheet that carries lines.
	const at: Point = piece.hole ? add(turn(scaledPoint(add(...grainShown(piece, folded)), 0.5)), [-20, 40])
		: middleDown ? [folded ? 60 : 0, box.from[1] + (box.to[1] - box.from[1]) * 0.45]
		: [box.from[0] + Math.min(120, (box.to[0] - box.from[0]) / 2), (box.from[1] + box.to[1]) / 2];
	return scaledDrawing({
		alt: altOf(pattern, draft, options, whole), box, inkMargin: [0, 0, 0, 0],
		shapes: [
			// On a small drawing, words of single lines stand only where they have room.
			...(options.scale === 1 ? shapes : shapes.map((shape) => (shape.shape === 'text' && shape.layer !== 'grain' ? { ...shape, rank: 1 } : shape))), words(at, pieceTitle(piece), 'title', { anchor: 'start', shift: [0, -22] }),
			...blockLines(pattern, draft, options, whole).map((text, i) => words(at, text, 'small', { anchor: 'start', shift: [0, i * 19] }))
		]
	}, 1 / options.scale);
}

function blockLines(pattern: PatternPiece, { skirt }: AnyDraft, { unit, code, date, mark, scale }: PatternOptions, whole: boolean): readonly string[] {
	const { allowances, hem } = skirt;
	const edges = [pattern.piece, ...(pattern.piece.hole ? [pattern.piece.hole] : [])].flatMap(({ cut }) => cut.edges.map(({ name }) => name));
	const has = (name: string, mm: number): string => (edges.includes(name) ? `, ${name} ${num(mm, unit)}` : '');
	return [
		// Two to a line: a shape that many cloths share would outgrow a sheet.
		...pairs(countWords(pattern, whole).split('; ')),
		`${code} · ${sizeWords(scale)}`, `${spellDate(date)} · draft ${mark}`,
		`allowances are included: seams ${num(allowances.seam, unit)}${has('waist', allowances.waist)}${has('hem', hem)} ${unit}`
	];
}
const pairs = (texts: readonly string[]): readonly string[] => texts.flatMap((text, i) => (i % 2 ? [] : [[text, ...texts.slice(i + 1, i + 2)].join('; ')]));

function altOf(pattern: PatternPiece, draft: AnyDraft, { unit, scale }: PatternOptions, whole: boolean): string {
	const waist = draft.skirt.style === 'flared' && 'waistRadius' in draft.figures ? ` Waist line ${numUnit(draft.figures.waistRadius, unit)} from the corner.` : '';
	return `${pieceTitle(pattern.piece)}, ${skirtWords(draft)}, ${sizeWords(scale)}. ${countWords(pattern, whole)}.${waist}`;
}
