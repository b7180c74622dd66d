// The hand-out: what one learner takes to the table to mark out, check and cut her skirt without a screen.
import type { Point } from '../drafting/geometry/point.ts';
import type { Draft } from '../drafting/draft.ts';
import type { StageList } from '../lesson/lesson.ts';
import type { OwnMade } from '../lesson/own-made.ts';
import { workingOf } from '../lesson/flared-working.ts';
import { num, numUnit } from './diagrams/number.ts';
import { sectorDiagram } from './diagrams/sector.ts';
import { madeRows } from './handout-made.ts';
import { drawingItems, type Laid } from './drawing-items.ts';
import { breakLines, textLength } from './letter.ts';
import { markingPlan, type MarkingPlan, type PlannedTable } from './marking-plan.ts';
import { markingSteps } from './marking-steps.ts';
import { pageOf, prose, roomOf, ruleLine, shareWords, tickBox, word, type Room } from './page.ts';
import type { Item, PaperName, Sheet } from './sheet.ts';

export interface HandoutOptions {
	readonly paper: PaperName;
	readonly unit: 'cm' | 'in';
	/** The class code and the learner's initial, never a name. */
	readonly code: string;
	/** `2026-11-25` */
	readonly date: string;
	readonly stages: StageList;
	readonly gate: readonly { readonly id: string; readonly says: string }[];
	/** What was measured on the real thing; null while nothing was. */
	readonly made?: OwnMade | null;
	/** Are her readings printed? Only if she chose it. */
	readonly bodyFigures: boolean;
}

/** Pages being filled from the top. */
interface Pages {
	readonly room: Room;
	readonly done: Item[][];
	items: Item[];
	y: number;
}
function turnPage(pages: Pages): void {
	pages.done.push(pages.items);
	pages.items = [];
	pages.y = pages.room.top;
}
/** Goes on to a new page unless so many mm are left on this one. */
function keep(pages: Pages, height: number): void {
	if (pages.y - height < pages.room.bottom) turnPage(pages);
}

export function handoutSheets(draft: Draft, options: HandoutOptions): readonly Sheet[] {
	const room = roomOf(options.paper);
	const pages: Pages = { room, done: [], items: [], y: room.top };
	const plan = markingPlan(draft, options.unit === 'cm' ? 1 : 25.4 / 8);
	writeTop(pages, draft, plan, options);
	writeGate(pages, options.gate);
	writeTables(pages, plan, options.unit);
	writeFigures(pages, draft, options);
	writeStages(pages, options.stages);
	turnPage(pages);
	const name = `Mark out your ${shareWords(draft.skirt.share)}`;
	return pages.done.map((items, i) => pageOf(options, i + 1, pages.done.length, name, items));
}

function heading(pages: Pages, text: string, follows: number): void {
	keep(pages, 12 + follows);
	pages.items.push(word([pages.room.left, pages.y - 7], text, 'heading', 13));
	pages.y -= 12;
}

/** Title, the half pattern to scale, and the steps beside it. */
function writeTop(pages: Pages, draft: Draft, plan: MarkingPlan, { unit, bodyFigures }: HandoutOptions): void {
	const { left, right, top, bottom } = pages.room;
	const measured = plan.far ? 'from the guide lines' : 'from the corner';
	const chosen = bodyFigures ? ' Your readings are printed because you chose it.' : '';
	const about = prose([left, top - 17.5], right - left, `All figures in ${unit === 'cm' ? 'centimetres' : 'inches'}, ${measured}.${chosen}`, 'read', 11);
	pages.items.push(word([left, top - 9.5], `Mark out your ${shareWords(draft.skirt.share)}`, 'heading', 25), ...about.items);
	pages.y = about.next + 1;
	const { laid, scale } = diagram(draft, unit, (right - left) * 0.66, (top - bottom) * 0.52, [left, pages.y]);
	pages.items.push(...laid.items);
	const under = pages.y - laid.height - 4;
	pages.items.push(...key([left, under], `drawn at 1 : ${scale}`));
	const steps = markingSteps(draft, plan, unit).map((text, i) => ({ text, number: i + 1 }));
	// Steps stand beside the drawing, or under a wide one in two columns: whichever ends higher.
	const aside = left + Math.max(laid.width + 5, (right - left) * 0.52);
	const beside = stepColumn(steps, [aside, pages.y - 6], right - aside);
	const half = Math.ceil(steps.length / 2);
	const wide = (right - left - 9) / 2;
	const [first, second] = [stepColumn(steps.slice(0, half), [left, under - 9], wide), stepColumn(steps.slice(half), [left + wide + 9, under - 9], wide)];
	const besideEnds = Math.min(under - 4, beside.next);
	const underEnds = Math.min(first.next, second.next);
	pages.items.push(...(besideEnds >= underEnds ? beside.items : [...first.items, ...second.items]));
	pages.y = Math.max(besideEnds, underEnds);
}

function stepColumn(steps: readonly { readonly text: string; readonly number: number }[], [x, top]: Point, wide: number): { items: readonly Item[]; next: number } {
	const items: Item[] = [];
	let y = top;
	for (const { text, number } of steps) {
		const said = prose([x + 7, y], wide - 7, text, 'read', 10.5, 4.9);
		items.push(word([x, y], String(number), 'heading', 12), ...said.items);
		y = said.next - 2.4;
	}
	return { items, next: y };
}

/** The largest of the round scales at which the drawing keeps to its place. */
function diagram(draft: Draft, unit: 'cm' | 'in', wide: number, high: number, at: Point): { laid: Laid; scale: number } {
	const drawing = sectorDiagram(draft, { unit, layout: 'half', emphasis: 'none' });
	for (const scale of [10, 12, 15, 20, 25, 30, 40, 50]) {
		const laid = drawingItems(drawing, 1 / scale, at);
		if (laid.width <= wide && laid.height <= high) return { laid, scale };
	}
	throw new Error(`a drawing that doesn't fit ${wide} by ${high} mm at 1 : 50`);
}

function key([x, y]: Point, says: string): readonly Item[] {
	const items: Item[] = [];
	let at = x;
	for (const [pen, text] of [['cut', 'cut'], ['stitch', 'stitch'], ['fold', 'fold']] as const) {
		items.push(ruleLine([at, y + 1.2], [at + 11, y + 1.2], pen), word([at + 12.5, y], text, 'label', 9));
		at += 17 + textLength(text, 'label', 9);
	}
	return [...items, word([at, y], says, 'label', 9)];
}

const ROW = 5.3;
const COLUMNS = 4;
/** The fewest rows a column needs so that all tables stand side by side. */
function evenRows(tables: readonly PlannedTable[]): number {
	let most = 6;
	while (tables.reduce((sum, { rows }) => sum + Math.ceil(rows.length / most), 0) > COLUMNS) most++;
	return most;
}
/** Tables in up to four columns, all on one page where they fit; a long one goes on in the next column, in even parts. */
function writeTables(pages: Pages, plan: MarkingPlan, unit: 'cm' | 'in'): void {
	const { left, right, top, bottom } = pages.room;
	const gap = 7;
	const wide = (right - left - gap * (COLUMNS - 1)) / COLUMNS;
	const even = evenRows(plan.tables);
	const fits = (from: number): number => Math.floor((from - bottom - 30) / ROW);
	if (fits(pages.y) < Math.min(even, fits(top))) turnPage(pages);
	const queue: { table: PlannedTable; rows: PlannedTable['rows']; rest: boolean }[] = plan.tables.map((table) => ({ table, rows: table.rows, rest: false }));
	while (queue.length) {
		if (fits(pages.y) < 8) turnPage(pages);
		const most = Math.min(even, fits(pages.y));
		let tallest = 0;
		for (let column = 0; column < COLUMNS && queue.length; column++) {
			const { table, rows, rest } = queue.shift()!;
			const parts = Math.ceil(rows.length / most);
			const here = rows.slice(0, Math.ceil(rows.length / parts));
			if (here.length < rows.length) queue.unshift({ table, rows: rows.slice(here.length), rest: true });
			pages.items.push(...tableColumn([left + column * (wide + gap), pages.y - 7], wide, table, here, rest, unit));
			tallest = Math.max(tallest, here.length);
		}
		pages.y -= 17 + tallest * ROW;
	}
	const off = Math.max(...plan.tables.map((t) => t.off));
	const moved = Math.abs(plan.tables[0]!.longer);
	const ruler = unit === 'cm' ? '1 mm' : '1/8 in';
	keep(pages, 12);
	const said = prose([left, pages.y - 5], right - left, `Marks are rounded to ${ruler}. No mark is more than ${cost(off, unit)} off its line, and rounding changes the whole waist line by ${cost(moved, unit)}. Walk it to be sure.`, 'read', 9.5);
	pages.items.push(...said.items);
	pages.y = said.next - 2;
}
const cost = (mm: number, unit: 'cm' | 'in'): string => (unit === 'cm' ? `${mm.toFixed(1)} mm` : `${(mm / 25.4).toFixed(2)} in`);

/** Beyond the corner a mark is measured up, not down. */
const reading = (mm: number, unit: 'cm' | 'in'): string => (mm < 0 ? `up ${num(-mm, unit)}` : num(mm, unit));

function tableColumn([x, top]: Point, wide: number, table: PlannedTable, rows: PlannedTable['rows'], rest: boolean, unit: 'cm' | 'in'): readonly Item[] {
	const title = rest ? `${table.title.split(' ')[0]}, the rest` : `${table.title} ${num(table.radius, unit)}`;
	const [a, b] = [x + wide * 0.66, x + wide];
	const items: Item[] = [
		word([x, top], title, 'labelStrong', 9), ruleLine([x, top - 2], [x + wide, top - 2], 'sewn'),
		word([x, top - 5.8], 'mark', 'label', 8), word([a, top - 5.8], table.first, 'label', 8, 'end'), word([b, top - 5.8], table.second, 'label', 8, 'end')
	];
	for (const [i, row] of rows.entries()) {
		const y = top - 7.6 - i * ROW;
		// Every fifth rule is heavier, so that the eye keeps its row.
		items.push(
			ruleLine([x, y], [x + wide, y], i % 5 === 0 && i > 0 ? 'measure' : 'rule'), word([x, y - 4], String(row.mark), 'label', 9.5),
			word([a, y - 4], reading(row.first, unit), 'read', 10.5, 'end'), word([b, y - 4], reading(row.second, unit), 'read', 10.5, 'end')
		);
	}
	return items;
}

function writeGate(pages: Pages, gate: HandoutOptions['gate'], title = 'Ready to cut'): void {
	if (!gate.length) return;
	const { left, right, top, bottom } = pages.room;
	const wide = (right - left - 10) / 2;
	const items = gate.map(({ says }) => breakLines(says, 'read', 10.5, wide - 8));
	const half = Math.ceil(items.length / 2);
	const columns = [items.slice(0, half), items.slice(half)];
	const height = (lines: readonly string[]): number => lines.length * 4.8 + 3;
	const tallest = Math.max(...columns.map((column) => column.reduce((sum, lines) => sum + height(lines), 0)));
	// A class may write more than a sheet holds: then half of it comes first.
	if (tallest + 26 > top - bottom && gate.length > 1) {
		writeGate(pages, gate.slice(0, Math.ceil(gate.length / 2)), title);
		return writeGate(pages, gate.slice(Math.ceil(gate.length / 2)), 'Ready to cut, the rest');
	}
	keep(pages, tallest + 22);
	if (pages.y < pages.room.top) {
		pages.items.push(ruleLine([left, pages.y - 2], [right, pages.y - 2]));
		pages.y -= 3;
	}
	heading(pages, title, tallest);
	for (const [i, column] of columns.entries()) {
		const x = left + i * (wide + 10);
		let y = pages.y - 4;
		for (const lines of column) {
			pages.items.push(tickBox([x, y - 0.7]), ...lines.map((line, n) => word([x + 8, y - n * 4.8], line, 'read', 10.5)));
			y -= height(lines);
		}
	}
	pages.y -= tallest + 3;
	pages.items.push(word([left, pages.y - 2], 'Shears and cutters are sharp: free hand well aside, blade guard closed between cuts, the maker’s and the room’s rules first.', 'label', 8.5));
	pages.y -= 8;
}

const SHOWN = ['waistSeamGirth', 'waistRadius', 'cutWaistRadius', 'skirtLength', 'hemRadius', 'cutHemRadius', 'hemSweep', 'bandCutLength', 'bandCutDepth'] as const;
/** Each figure to sew by with the sum it comes from. The waist's own reading stands in a sum only if it was chosen. */
function writeFigures(pages: Pages, draft: Draft, { unit, bodyFigures, made }: HandoutOptions): void {
	const { left, right } = pages.room;
	const { body, figures: f } = draft;
	heading(pages, 'Your figures', 20);
	const row = (name: string, sum: string, result: string): void => {
		keep(pages, 6.4);
		pages.items.push(
			ruleLine([left, pages.y], [right, pages.y]), word([left, pages.y - 4.6], name, 'label', 10),
			...(sum ? [word([left + 54, pages.y - 4.6], sum, 'read', 10)] : []), word([right, pages.y - 4.6], result, 'labelStrong', 11, 'end')
		);
		pages.y -= 6.4;
	};
	if (bodyFigures) {
		for (const [name, mm] of [['waist, read', body.waist], ['hip, read', body.hip], ['waist to hip, read', body.waistToHip]] as const) if (mm !== undefined) row(name, '', num(mm, unit));
	}
	for (const name of SHOWN) {
		const working = workingOf(name, draft, unit);
		if (!working) continue;
		const { steps, finer } = working;
		const hidden = name === 'waistSeamGirth' && !bodyFigures;
		const sums = steps.map(({ operands, result }) => `${operands.map(({ written }) => written).join(' ')} = ${result}`);
		row(working.of, hidden ? '' : [...sums, ...(finer === null ? [] : [`finer ${finer}`])].join(', '), num(working.mm, unit));
	}
	if (f.openingBelowSeam !== undefined && f.openingBelowSeam > 0) row('opening below the waist seam, at least', '', num(f.openingBelowSeam, unit));
	if (f.zipLength !== undefined && f.zipEndBelowSeam !== undefined) {
		row('zip to buy', '', numUnit(f.zipLength, unit));
		row('zip ends below the waist stitch line', '', num(f.zipEndBelowSeam, unit));
	}
	const asMade = made ? madeRows(made, unit) : [];
	if (asMade.length > 0) heading(pages, 'As made: these count now', 7);
	for (const [name, aside, result] of asMade) row(name, aside, result);
	pages.y -= 4;
}

const STEP = 5;
/** Every stage with a box for each of its steps, in two columns. A stage isn't parted unless it fills a column. */
function writeStages(pages: Pages, stages: StageList): void {
	if (!stages.length) return;
	const { left, right, top, bottom } = pages.room;
	const gap = 9;
	const wide = (right - left - gap) / 2;
	const lines = stages.map(({ steps }) => steps.map(({ title }) => breakLines(title, 'read', 9.5, wide - 7)));
	const heights = lines.map((steps) => 11.6 + steps.reduce((sum, step) => sum + step.length * STEP, 0));
	// A page of their own, unless what is left of this one holds them all.
	const all = heights.reduce((sum, h) => sum + h, 0);
	if (pages.y - (all / 2 + Math.max(...heights) / 2 + 12) < bottom && pages.y < top) turnPage(pages);
	heading(pages, 'The stages, a box for each step', 0);
	let [column, start, y, filled] = [0, pages.y, pages.y, 0];
	const nextColumn = (): void => {
		if (column === 1) {
			turnPage(pages);
			start = pages.y;
		}
		[column, y] = [1 - column, start];
	};
	for (const [i, { title, minutes, waits }] of stages.entries()) {
		if (column === 0 && filled > 0 && filled < all / 2 && filled + heights[i]! / 2 > all / 2) nextColumn();
		// A stage that no column holds whole begins at the top of one and goes on in the next.
		if (y - heights[i]! < bottom && y < start) nextColumn();
		filled += heights[i]!;
		const x = (): number => left + column * (wide + gap);
		pages.items.push(
			ruleLine([x(), y - 1], [x() + wide, y - 1], 'sewn'), word([x(), y - 6], `${i + 1}  ${title}`, 'labelStrong', 10),
			word([x() + wide, y - 6], `${minutes} min${waits ? `, rests ${waits} h` : ''}`, 'label', 8, 'end')
		);
		y -= 11.6;
		for (const step of lines[i]!) {
			if (y - step.length * STEP < bottom - 2) {
				nextColumn();
				y -= 6;
			}
			pages.items.push(tickBox([x(), y - 0.6], 3.4), ...step.map((line, n) => word([x() + 6, y - n * 4.4], line, 'read', 9.5)));
			y -= step.length * STEP;
		}
		pages.y = Math.min(pages.y, y);
	}
}
