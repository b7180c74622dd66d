// A drawing made smaller about its origin. Words and marks keep their size: they are read, not measured.
import type { Point } from '../drafting/geometry/point.ts';
import type { Drawing, Label, Path, Shape } from './drawing.ts';

const point = ([x, y]: Point, by: number): Point => [x * by, y * by];
export const scaledPath = ({ start, edges }: Path, by: number): Path => ({
	start: point(start, by), edges: edges.map((e) => ({ ...e, end: point(e.end, by), centre: e.centre && point(e.centre, by) }))
});

export function scaledDrawing(drawing: Drawing, by: number): Drawing {
	if (by === 1) return drawing;
	const { box, dots } = drawing;
	return {
		...drawing, shapes: drawing.shapes.map((shape) => scaledShape(shape, by)), box: { from: point(box.from, by), to: point(box.to, by) },
		...(dots && { dots: { every: dots.every * by, inside: scaledPath(dots.inside, by), ...(dots.also && { also: dots.also.map((path) => scaledPath(path, by)) }) } })
	};
}

function scaledShape(shape: Shape, by: number): Shape {
	switch (shape.shape) {
		case 'path': return { ...shape, path: scaledPath(shape.path, by) };
		case 'mark': return { ...shape, at: point(shape.at, by) };
		// What it reads is the cloth's, so it reads as much more for each mm as it is smaller.
		case 'ruler': return { ...shape, along: scaledPath(shape.along, by), per: (shape.per ?? 1) / by };
		default: return scaledLabel(shape, by);
	}
}
function scaledLabel(label: Label, by: number): Label {
	const or = label.or && { or: label.or.map((other) => scaledLabel(other, by)) };
	return label.shape === 'text' ? { ...label, at: point(label.at, by), ...or } : { ...label, path: scaledPath(label.path, by), ...or };
}
