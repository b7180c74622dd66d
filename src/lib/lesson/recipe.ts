// A figure's sum before any number stands in it: what it is made of, step by step. A book holds a draft's recipes.
export type Sign = '+' | '−' | '×' | '÷';
/** A key of a calculator, pressed after what stands before it. Angles are in degrees. */
export type Key = '√' | 'cos⁻¹' | 'sin';

export type Item =
	/** A figure of the book by its name, and what it is called in the sum. */
	| { readonly of: string; readonly is: string }
	/** A length that is the same for everyone. mm */
	| { readonly mm: number; readonly is: string }
	/** What an earlier step of the same sum came to, counted from 0. */
	| { readonly step: number }
	/** A plain number, as it is written. */
	| { readonly number: string }
	/** 2π times so much of a circle: 3.14 or 3.1416 for a half. */
	| { readonly sweep: number }
	| Sign
	| Key;

export interface Recipe {
	/** What is worked out: `waist radius`. */
	readonly of: string;
	/** Worked from left to right, and never so that products going first would come to something else. */
	readonly steps: readonly (readonly Item[])[];
	/** How it comes about in words, where the step's own names don't say it. */
	readonly says?: string;
	/** What is drawn from this figure, by name: it is divided by 3.14 while all of them stay right on the ruler. */
	readonly drawn?: readonly string[];
	/** The last step is held against this figure. */
	readonly meets?: { readonly of: string; readonly is: string };
	/** The steps show that the figure is right, not how it was found: the last one doesn't come to it. */
	readonly proof?: true;
	/** It is the last of these lengths, in the order they are sold. mm */
	readonly among?: readonly number[];
	/** Where the book's figures don't have it. mm */
	readonly mm?: number;
}

export interface Book {
	/** Null where this draft comes by the figure in another way. */
	readonly recipe: (name: string) => Recipe | null;
	/** Unrounded. */
	readonly mm: (name: string) => number | undefined;
}

export const of = (name: string, is: string): Item => ({ of: name, is });
export const fixed = (mm: number, is: string): Item => ({ mm, is });
export const number = (value: number | string): Item => ({ number: String(value) });
export const step = (index: number): Item => ({ step: index });
export const sweep = (share: number): Item => ({ sweep: share });
