// Skirts side by side, in words: one row a question, one cell a skirt.
import type { Compared } from '../../drafting/compare.ts';
import { mmPer, type Unit } from '../../drafting/length.ts';
import { checkSentence } from './check.ts';
import { count } from './count.ts';
import { shareWords } from './figure.ts';
import { issueSentence } from './issue.ts';
import { fine, long } from './long.ts';

export interface CompareCell {
	readonly text: string;
	/** Against the first skirt, or more of the same; on a line of its own. */
	readonly more: readonly string[];
	/** Whether it is one to think about first. */
	readonly flag: boolean;
}
export interface CompareRow {
	readonly name: string;
	readonly cells: readonly CompareCell[];
}

/** How cloth falls from the waist, by share of a circle (common practice, no source). It depends on the cloth as well. */
export function hangWords(share: number): string {
	if (share <= 0.3) return 'nearly straight, a slight swing at the hem';
	if (share <= 0.55) return 'soft folds, from the hip down';
	if (share <= 0.8) return 'deep folds all round';
	if (share <= 1.1) return 'many deep folds from the waist down';
	return 'very full: folds on folds, heavy at the hem';
}

/** An area in the reader's measure: square metres, or square yards (36 in), to a hundredth. */
export const areaWords = (mm2: number, unit: Unit): string =>
	unit === 'in' ? `${(mm2 / (36 * mmPer.in) ** 2).toFixed(2)} sq yd` : `${(mm2 / 1e6).toFixed(2)} m²`;

function apartWords(mm: number | undefined, unit: Unit): readonly string[] {
	if (mm === undefined) return [];
	const size = long(Math.abs(mm), unit);
	return size === long(0, unit) ? ['the same'] : [`${size} ${mm > 0 ? 'more' : 'less'}`];
}

const finishWords = { narrow: 'narrow', turned: 'turned once', rolled: 'rolled', bound: 'bound', faced: 'faced' } as const;
const percent = (fraction: number): string => (Number.isFinite(fraction) ? `${(fraction * 100).toFixed(1)}\u00a0%` : 'more than can be eased');

const cell = (text: string, more: readonly string[] = [], flag = false): CompareCell => ({ text, more, flag });

export function compareRows(columns: readonly Compared[], unit: Unit, clothWidth?: number): readonly CompareRow[] {
	/** A row about what a draft tells; a skirt that can't be cut tells nothing. */
	const told = (name: string, say: (told: NonNullable<Compared['told']>, column: Compared) => CompareCell): CompareRow =>
		({ name, cells: columns.map((column) => (column.told ? say(column.told, column) : cell('–'))) });
	const any = (name: string, say: (column: Compared) => CompareCell): CompareRow => ({ name, cells: columns.map(say) });
	return [
		any('Flare', ({ skirt }) => cell(shareWords(skirt.share))),
		any('Falls in', ({ skirt }) => cell(hangWords(skirt.share))),
		any('Finished length', ({ skirt }) => cell(long(skirt.length, unit))),
		any('Panels', ({ skirt }) => cell(String(skirt.panels))),
		told('Round the hem', ({ hemSweep, fullness }, { apart }) =>
			cell(long(hemSweep, unit), [...apartWords(apart?.hemSweep, unit), `${fullness.toFixed(1)} times the waist seam`])),
		told('Hem to ease in', ({ hem }, { skirt }) => {
			const [own, ...others] = [...hem].sort((a, b) => Number(b.finish === skirt.hemFinish) - Number(a.finish === skirt.hemFinish));
			const say = ({ finish, surplus, fraction }: (typeof hem)[number]) => `${finishWords[finish]}: ${long(surplus, unit)}, ${percent(fraction)}`;
			return cell(own ? say(own) : '–', others.map(say));
		}),
		told('Zip', ({ zip }) => cell(zip === null ? 'measure the hip first' : zip === 0 ? 'none needed' : long(zip, unit))),
		told('Cloth in one panel', ({ panelArea }) => cell(areaWords(panelArea, unit))),
		told('Largest piece', ({ cloth }) => cell(`${long(cloth.across, unit)} across the cloth`, [`${long(cloth.along, unit)} along it`], cloth.fits === false)),
		...(clothWidth === undefined ? [] : [told(`Cloth ${long(clothWidth, unit)} wide`, ({ cloth }) => (cloth.leastLength === null
			? cell('too narrow for one piece', ['more panels make narrower pieces'], true)
			: cell(`${long(cloth.leastLength, unit)} at the least`, ['a layout takes more'])))]),
		any('To think about', ({ told: tells, obstacles }) => {
			if (!tells) return cell('can’t be cut', obstacles.map((issue) => issueSentence(issue, unit)), true);
			if (tells.checks.length === 0) return cell('nothing stands in the way');
			const stops = tells.checks.filter(({ severity }) => severity === 'stop').length;
			return cell(stops > 0 ? 'not fit to cut' : count(tells.checks.length, 'thing', 'things'), tells.checks.map((check) => checkSentence(check, unit)), true);
		})
	];
}

/** What a variant is called: the choices in which it is otherwise. */
export function variantTitle({ skirt, chosen }: Compared, unit: Unit): string {
	const says: Readonly<Record<string, string>> = {
		'skirt.share': shareWords(skirt.share), 'skirt.length': `${long(skirt.length, unit)} long`, 'skirt.panels': count(skirt.panels, 'panel', 'panels'),
		'skirt.hem': `hem ${fine(skirt.hem, unit)}`
	};
	const parts = chosen.flatMap((path) => says[path] ?? []);
	const title = parts.length === 0 ? 'the same again' : parts.join(', ');
	return title.charAt(0).toUpperCase() + title.slice(1);
}
