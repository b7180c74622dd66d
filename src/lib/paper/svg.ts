// Pieces as one SVG whose user unit is the millimetre, each piece a group with a named group for each kind of line.
// Arcs stay arcs. Rounded here and nowhere before, to a thousandth of a millimetre.
import { polar, type Point } from '../drafting/geometry/point.ts';
import { boxOf } from './clip.ts';
import { CHECK } from './check-line.ts';
import type { CutterPiece } from './cutter.ts';
import type { Path, Shape } from './drawing.ts';
import { inkOf } from './ink-mark.ts';
import { INK, PENS } from './pen.ts';
import { VOICES } from './block-place.ts';
import type { Item } from './sheet.ts';

export interface SvgWords {
	readonly title: string;
	/** BCP 47. */
	readonly lang: string;
	/** `true size` */
	readonly size: string;
}
/** What each group holds, in the order they are drawn. */
export const SVG_GROUPS = ['stitch', 'cut', 'mirror', 'fold', 'grain', 'notch', 'words'] as const;
type Group = (typeof SVG_GROUPS)[number];

const GAP = 20;
const HEAD = CHECK + 22;

export function writeSvg(pieces: readonly CutterPiece[], { title, lang, size }: SvgWords): string {
	let y = GAP + HEAD;
	let wide = CHECK + 80;
	const ids = pieces.map(({ name }) => name.toLowerCase().replace(/[^a-z0-9]+/g, '-'));
	const groups = pieces.map((piece, i) => {
		const { from, to } = boxOf(piece.drawing.shapes.flatMap((shape) => (shape.shape === 'path' && shape.line ? [shape.path] : [])));
		// The drawing's point that lies at the group's upper left, and where that is on the page.
		const put = ([px, py]: Point): Point => [GAP + px - from[0], y + to[1] - py];
		const group = pieceGroup(piece, ids[i]!, put);
		y += to[1] - from[1] + GAP;
		wide = Math.max(wide, to[0] - from[0]);
		return group;
	});
	const [width, height] = [wide + 2 * GAP, y];
	return [
		'<?xml version="1.0" encoding="UTF-8"?>',
		`<svg xmlns="http://www.w3.org/2000/svg" xml:lang="${escaped(lang)}" width="${round(width)}mm" height="${round(height)}mm" viewBox="0 0 ${round(width)} ${round(height)}">`,
		`<title>${escaped(title)}</title>`, checkGroup(size), ...groups, '</svg>', ''
	].join('\n');
}

/** A square to measure before anything is cut. */
function checkGroup(size: string): string {
	const d = `M${GAP} ${GAP}h${CHECK}v${CHECK}h-${CHECK}Z`;
	const words = `<text x="${GAP}" y="${GAP + CHECK + 7}" font-size="4" font-family="sans-serif">This square is ${CHECK} mm on each side. The pieces: ${escaped(size)}.</text>`;
	return `<g id="check" fill="none" stroke="black" stroke-width="0.3"><path d="${d}"/></g>\n<g id="check-words">${words}</g>`;
}

function pieceGroup({ title, count, cloth, drawing }: CutterPiece, id: string, put: (p: Point) => Point): string {
	const parts = new Map<Group, string[]>(SVG_GROUPS.map((group) => [group, []]));
	for (const shape of drawing.shapes) {
		const drawn = shapeOf(shape, put);
		if (drawn) parts.get(groupOf(shape))!.push(drawn);
	}
	const groups = [...parts].filter(([, drawn]) => drawn.length > 0).map(([group, drawn]) => `<g id="${id}-${group}" class="${group}"${penOf(group)}>\n${drawn.join('\n')}\n</g>`);
	return `<g id="piece-${id}">\n<title>${escaped(`${title}, ${count} in ${cloth}`)}</title>\n${groups.join('\n')}\n</g>`;
}

function groupOf(shape: Shape): Group {
	if (shape.layer === 'mirror') return 'mirror';
	if (shape.layer === 'grain') return 'grain';
	if (shape.shape === 'mark') return 'notch';
	if (shape.shape !== 'path') return 'words';
	return shape.line === 'cut' ? 'cut' : shape.line === 'stitch' ? 'stitch' : 'fold';
}

function penOf(group: Group): string {
	if (group === 'words' || group === 'notch') return '';
	const { weight, dash } = PENS[group === 'mirror' ? 'fold' : group];
	return ` fill="none" stroke="black" stroke-width="${round(weight)}"${dash ? ` stroke-dasharray="${dash.map(round).join(' ')}"` : ''}`;
}

function shapeOf(shape: Shape, put: (p: Point) => Point): string | null {
	if (shape.shape === 'path') return shape.line ? `<path d="${svgPath(shape.path, shape.closed, put)}"/>` : null;
	if (shape.shape === 'mark') {
		return inkOf(shape, false, (corners) => corners, (path) => [{ path, run: 0 }]).map((item) => inked(item, put)).join('');
	}
	if (shape.shape !== 'text') throw new Error(`a pattern piece with a ${shape.shape}`);
	const [x, y] = put(shape.at);
	const [dx, dy] = [(shape.shift?.[0] ?? 0) * INK, (shape.shift?.[1] ?? 0) * INK];
	const { face, size } = VOICES[shape.voice];
	const weight = face === 'heading' ? ' font-weight="800"' : face === 'labelStrong' ? ' font-weight="700"' : '';
	const anchor = shape.anchor && shape.anchor !== 'start' ? ` text-anchor="${shape.anchor}"` : '';
	const turn = shape.angle ? ` transform="rotate(${round((-shape.angle * 180) / Math.PI)} ${round(x)} ${round(y)})"` : '';
	return `<text x="${round(x + dx)}" y="${round(y + dy)}" font-size="${round((size * 25.4) / 72)}" font-family="Commissioner, sans-serif" fill="black" stroke="none"${weight}${anchor}${turn}>${escaped(shape.text)}</text>`;
}
function inked(item: Item, put: (p: Point) => Point): string {
	if (item.item !== 'path') throw new Error('a mark made of words');
	return `<path d="${svgPath(item.path, item.closed, put)}"${item.pen ? '' : ' fill="black" stroke="none"'}/>`;
}

/** Readers draw an arc as cubics of a quarter circle, which leave a metre's radius by 0.3 mm; of a twelfth, by under 0.001 mm. */
const MOST = Math.PI / 6;
export function svgPath({ start, edges }: Path, closed: boolean, put: (p: Point) => Point): string {
	const at = (p: Point): string => put(p).map(round).join(' ');
	let d = `M${at(start)}`;
	let from = start;
	for (const { end, centre, turn } of edges) {
		if (!centre) d += `L${at(end)}`;
		else {
			const [dx, dy] = [from[0] - centre[0], from[1] - centre[1]];
			const [radius, begins] = [Math.hypot(dx, dy), Math.atan2(dy, dx)];
			const steps = Math.max(1, Math.ceil(Math.abs(turn) / MOST));
			// y runs down here, so what turned counterclockwise turns against the SVG's positive angle.
			for (let i = 1; i <= steps; i++) d += `A${round(radius)} ${round(radius)} 0 0 ${turn > 0 ? 0 : 1} ${at(i === steps ? end : polar(centre, radius, begins + (turn * i) / steps))}`;
		}
		from = end;
	}
	return closed ? `${d}Z` : d;
}

const round = (mm: number): string => String(Math.round(mm * 1000) / 1000);
const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
