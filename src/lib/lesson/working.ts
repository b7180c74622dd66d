// How a figure comes about, as data that a person with a calculator can follow: every number as it is written, every
// result as it is shown. A result that is used again is used as it was written, so the whole chain can be followed from
// the readings to the ruler; where it would lead to another mark than the pattern's, the working says the finer number.
import type { Unit } from '../class/event.ts';
import type { Book, Item, Recipe } from './recipe.ts';
import { calculate, leadsTo, writeFiner, writeKept } from './written.ts';

export interface Operand {
	/** `23.89`, `÷`, `3.14`. */
	readonly written: string;
	/** What it is, for a length: `waist radius`. */
	readonly is?: string;
}
export interface Step {
	readonly operands: readonly Operand[];
	readonly result: string;
}
export interface Input {
	readonly name: string;
	readonly is: string;
	readonly mm: number;
	readonly written: string;
	/** Is it what a sum of its own came to? */
	readonly worked: boolean;
}

export interface Working {
	readonly name: string;
	/** What is worked out: `waist radius`. */
	readonly of: string;
	/** How, in words: `waist seam ÷ 3.14`. */
	readonly formula: string;
	readonly inputs: readonly Input[];
	/** None where no sum gives it. */
	readonly steps: readonly Step[];
	/** Unrounded: what the pattern is drawn from. */
	readonly mm: number;
	/** The figure to more places, where the steps lead to another mark on the ruler. */
	readonly finer: string | null;
	/** The steps show that the figure is right: the last one doesn't come to it. */
	readonly proof: boolean;
	/** What the last step is held against. */
	readonly meets?: { readonly is: string; readonly written: string };
	/** The lengths it is taken from, the last one taken. mm */
	readonly among?: readonly number[];
}

/** Null where the book lacks one of the figures or comes by it in another way. */
export const workIn = (book: Book, name: string, unit: Unit): Working | null => workings(book, unit)(name);

/** Every figure of a book, worked in one chain. */
export function workings(book: Book, unit: Unit): (name: string) => Working | null {
	/** Those worked with 3.1416: where 3.14 would lead to another mark on the ruler, for themselves or for what is drawn from them. */
	const fine = new Set<string>();
	const settled = new Set<string>();
	const written = new Map<string, string | undefined>();
	const figure = (name: string): number | undefined => book.recipe(name)?.mm ?? book.mm(name);
	const right = (name: string): boolean => leadsTo(write(name) ?? '', figure(name) ?? NaN, unit);

	/** As it stands in a later sum: what its own came to, or the reading as kept. */
	function write(name: string): string | undefined {
		if (!written.has(name)) {
			const mm = figure(name);
			const recipe = isWorked(book, name) ? book.recipe(name) : null;
			written.set(name, mm === undefined ? undefined : ((recipe && stepsOf(recipe, name))?.at(-1)?.result ?? writeKept(mm, unit)));
		}
		return written.get(name);
	}
	function settle(name: string): void {
		const recipe = book.recipe(name);
		if (!recipe || settled.has(name)) return;
		settled.add(name);
		const items = recipe.steps.flat();
		for (const item of items) if (typeof item !== 'string' && 'of' in item) settle(item.of);
		if (!items.some((item) => typeof item !== 'string' && 'sweep' in item)) return;
		written.clear();
		if (![name, ...(recipe.drawn ?? [])].filter((one) => isWorked(book, one)).every(right)) fine.add(name);
		written.clear();
	}
	/** Null where one of its figures isn't known. */
	function stepsOf(recipe: Recipe, name: string): readonly Step[] | null {
		const steps: Step[] = [];
		for (const items of recipe.steps) {
			const operands = items.map((item): Operand | null => {
				if (typeof item === 'string') return { written: item };
				if ('number' in item) return { written: item.number };
				if ('sweep' in item) return { written: sweepNumber(item.sweep, fine.has(name)) };
				if ('step' in item) return { written: steps[item.step]!.result };
				const text = 'of' in item ? write(item.of) : writeKept(item.mm, unit);
				return text === undefined ? null : { written: text, is: item.is };
			});
			if (!operands.every((operand) => operand !== null)) return null;
			steps.push({ operands, result: calculate(operands.map((operand) => operand.written), unit) });
		}
		return steps;
	}

	return (name) => {
		const recipe = book.recipe(name);
		const mm = figure(name);
		if (!recipe || mm === undefined) return null;
		settle(name);
		const steps = stepsOf(recipe, name);
		const meets = recipe.meets && write(recipe.meets.of);
		if (!steps || (recipe.meets && meets === undefined)) return null;
		const used = new Map(recipe.steps.flat().flatMap((item) => (typeof item !== 'string' && 'of' in item ? [[item.of, item.is] as const] : [])));
		const last = steps.at(-1)?.result;
		return {
			name, of: recipe.of, formula: recipe.says ?? say(recipe, fine.has(name)), steps, mm,
			inputs: [...used].map(([name, is]) => ({ name, is, mm: figure(name)!, written: write(name)!, worked: isWorked(book, name) })),
			proof: recipe.proof ?? false,
			finer: last === undefined || recipe.proof || leadsTo(last, mm, unit) ? null : writeFiner(mm, unit),
			...(recipe.meets && meets !== undefined && { meets: { is: recipe.meets.is, written: meets } }),
			...(recipe.among && { among: recipe.among })
		};
	};
}

/** Does its last step give it? A reading has none, and a proof's gives something else. */
function isWorked(book: Book, name: string): boolean {
	const recipe = book.recipe(name);
	return recipe !== null && recipe.steps.length > 0 && !recipe.proof;
}

/** 3.14 for a half circle, 6.28 for a full one: 0.05 % out, and 3.1416 where the ruler would show it. */
const sweepNumber = (share: number, fine: boolean): string => (2 * Math.PI * share).toFixed(fine ? 4 : 2);

/** The last step in its own names, those before it in brackets. */
function say({ steps }: Recipe, fine: boolean): string {
	const words = (items: readonly Item[]): string => items.map((item) =>
		typeof item === 'string' ? item
			: 'number' in item ? item.number
				: 'sweep' in item ? sweepNumber(item.sweep, fine)
					: 'step' in item ? `(${words(steps[item.step]!)})` : item.is).join(' ');
	return words(steps.at(-1) ?? []);
}
