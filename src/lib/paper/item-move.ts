// What is on a sheet, moved aside.
import type { Point } from '../drafting/geometry/point.ts';
import type { Path } from './drawing.ts';
import type { Item } from './sheet.ts';

const shift = ([x, y]: Point, [dx, dy]: Point): Point => [x + dx, y + dy];
export const movedPath = (path: Path, by: Point): Path => ({
	start: shift(path.start, by), edges: path.edges.map((e) => ({ ...e, end: shift(e.end, by), centre: e.centre && shift(e.centre, by) }))
});
export const moved = (item: Item, by: Point): Item => (item.item === 'text' ? { ...item, at: shift(item.at, by) } : { ...item, path: movedPath(item.path, by) });
