// The ruler down the left of every sheet. Its thick first 100 mm is the check line: it shows that the print is true.
import type { Point } from '../drafting/geometry/point.ts';
import { linePath } from './diagrams/shape.ts';
import { isRoll, MARGIN, PAPER_NAMES, PAPERS, type Item, type PaperName, type Pen } from './sheet.ts';

export const CHECK = 100;
const inch = 25.4;
export const CHECK_WORDS = 'this line is 100 mm; if yours is not, print again at 100 %';
/** How wide the strip is that the ruler and its words take, from the margin. */
export const RULER_STRIP = 14;
/** Where the spine stands, mm from the sheet's edge: half its thick weight stays clear of the margin. */
const SPINE = MARGIN + 0.8;

const stroke = (from: Point, to: Point, pen: Pen): Item => ({ item: 'path', path: linePath(from, to), closed: false, pen });

/** A ruler in the learner's unit from `top` down to `bottom`, mm on the sheet. Inches have a mark at 4 as well. */
export function rulerItems(unit: 'cm' | 'in', top: number, bottom: number): readonly Item[] {
	const every = unit === 'cm' ? 1 : inch / 8;
	const big = unit === 'cm' ? 10 : 8;
	const length = Math.floor((top - bottom) / (unit === 'cm' ? 10 : inch)) * (unit === 'cm' ? 10 : inch);
	const items: Item[] = [stroke([SPINE, top], [SPINE, top - length], 'measure'), stroke([SPINE, top], [SPINE, top - CHECK], 'check')];
	for (let i = 0; i * every <= length + 1e-6; i++) {
		const y = top - i * every;
		const reach = i % big === 0 ? 5 : i % (big / 2) === 0 ? 3.6 : 2.4;
		items.push(stroke([SPINE, y], [SPINE + reach, y], i % big === 0 ? 'measure' : 'fine'));
		// Four inches have a mark of their own.
		if (i % big === 0 && !(unit === 'in' && i === 4 * big)) items.push({ item: 'text', at: [SPINE + 5.6, i === 0 ? y - 3.2 : y - 0.9], text: String(i / big), face: 'label', size: 7.5 });
	}
	// Bars close the check line at both ends; 4 in is longer by 1.6 mm.
	for (const y of [top, top - CHECK]) items.push(stroke([SPINE - 0.5, y], [SPINE + 7.6, y], 'sewn'));
	items.push({ item: 'text', at: [SPINE + 11.8, top - CHECK / 2], text: CHECK_WORDS, face: 'labelStrong', size: 8, anchor: 'middle', angle: Math.PI / 2 });
	if (unit === 'in') {
		const four = top - 4 * inch;
		items.push(stroke([SPINE, four], [SPINE + 7.6, four], 'cut'), { item: 'text', at: [SPINE + 8.4, four - 1.2], text: '4 in', face: 'labelStrong', size: 8 });
	}
	return items;
}

/** The check line across: a printer may stretch one way alone. Its left end at `at`, `words` beside it. */
export function acrossItems([x, y]: Point, words = `${CHECK} mm`): readonly Item[] {
	return [
		stroke([x, y], [x + CHECK, y], 'check'), stroke([x, y - 1.5], [x, y + 1.5], 'sewn'), stroke([x + CHECK, y - 1.5], [x + CHECK, y + 1.5], 'sewn'),
		...(words ? [{ item: 'text', at: [x + CHECK + 2, y - 0.8], text: words, face: 'label', size: 7 } as const] : [])
	];
}

/** Squares of 100 mm and of 4 in from one corner, `at` their lower left: whichever ruler is at hand. */
export function squareItems([x, y]: Point): readonly Item[] {
	const square = (side: number, pen: Pen): Item => ({ item: 'path', path: linePath([x, y], [x + side, y], [x + side, y + side], [x, y + side], [x, y]), closed: true, pen });
	const word = (at: Point, text: string, angle?: number): Item => ({ item: 'text', at, text, face: 'labelStrong', size: 8, anchor: 'middle', ...(angle && { angle }) });
	return [
		square(CHECK, 'measure'), square(4 * inch, 'fine'),
		word([x + CHECK / 2, y + CHECK - 4.5], '100 mm, inner square'), word([x + CHECK / 2, y + 4 * inch + 1.2], '4 in, outer square'),
		word([x + 4 * inch + 3.4, y + CHECK / 2], '4 in', -Math.PI / 2), word([x + CHECK - 4.5, y + CHECK / 2], '100 mm', -Math.PI / 2)
	];
}

export interface PrintScale {
	readonly right: boolean;
	/** What 1 mm came out as. */
	readonly scale: number;
	/** What the print was probably told: to fit a sheet of another size. */
	readonly likely: { readonly made: PaperName; readonly fittedTo: PaperName } | null;
}

/** What a sheet of one size comes out at when a printer fits it to another. */
export const fitScale = (made: PaperName, to: PaperName): number =>
	Math.min(PAPERS[to].width / PAPERS[made].width, PAPERS[to].height / PAPERS[made].height);

/**
 * Judges a check line that reads `mm`. Half a millimetre is what a ruler can tell, and moves a waist of 74 cm by 4 mm;
 * more is refused (common practice, no source).
 */
export function judgeCheckLine(mm: number): PrintScale {
	const scale = mm / CHECK;
	if (Math.abs(mm - CHECK) <= 0.5) return { right: true, scale, likely: null };
	const names = PAPER_NAMES.filter((name) => !isRoll(name));
	const pairs = names.flatMap((made) => names.filter((to) => to !== made).map((fittedTo) => ({ made, fittedTo })));
	const likely = pairs.find(({ made, fittedTo }) => Math.abs(fitScale(made, fittedTo) * CHECK - mm) <= 0.6) ?? null;
	return { right: false, scale, likely };
}
