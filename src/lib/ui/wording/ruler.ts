// A mark on a ruler in words: what it reads, how it is found, how far it is from the figure, what that does to the waist.
import type { Graduation, RulerMark } from '../../drafting/ruler.ts';
import { rulerPlace, rulers } from '../../drafting/ruler.ts';
import { formatLength } from '../../drafting/length.ts';
import { count } from './count.ts';

export const graduationWords: Readonly<Record<Graduation, string>> = {
	mm: 'every millimetre', halfCm: 'every half centimetre', eighth: 'every eighth of an inch', sixteenth: 'every sixteenth of an inch'
};
const marks: Readonly<Record<Graduation, readonly [one: string, many: string]>> = {
	mm: ['millimetre', 'millimetres'], halfCm: ['half centimetre', 'half centimetres'], eighth: ['eighth', 'eighths'], sixteenth: ['sixteenth', 'sixteenths']
};
/** The graduations of rulers in a unit, the finest first. */
export const graduationsIn: Readonly<Record<'cm' | 'in', readonly Graduation[]>> = { cm: ['mm', 'halfCm'], in: ['sixteenth', 'eighth'] };

const isMetric = (graduation: Graduation): boolean => graduation === 'mm' || graduation === 'halfCm';

/** What the mark reads: "22.3 cm", "22.5 cm", "9 9/16 in". A whole number of centimetres has no point. */
export function markReads({ mm }: RulerMark, graduation: Graduation): string {
	if (!isMetric(graduation)) return formatLength(mm, 'in', { step: graduation === 'eighth' ? 1 / 8 : 1 / 16 });
	return formatLength(mm, 'cm').replace(/\.0 cm$/, ' cm');
}

/** How it is found: "the mark of 22 cm", "3 millimetres past 22 cm", "1 sixteenth past 9 1/2 in". */
export function markFound(mark: RulerMark, graduation: Graduation): string {
	const { from, count: steps } = rulerPlace(mark, graduation);
	const mm = from * rulers[graduation].division;
	const long = markReads({ divisions: from, mm, off: 0 }, graduation);
	if (steps === 0) return `on the mark of ${long}`;
	return `${count(Math.abs(steps), ...marks[graduation])} ${steps > 0 ? 'past' : 'before'} ${long}`;
}

const tenths = (mm: number): string => `${(Math.round(Math.abs(mm) * 10) / 10).toFixed(1)} mm`;

/** Under a twentieth of a millimetre nobody can see it. */
export const isOff = ({ off }: RulerMark): boolean => Math.abs(off) >= 0.05;

/** How far the mark is from the figure. */
export function markOff(mark: RulerMark): string {
	const { off } = mark;
	if (!isOff(mark)) return 'as worked out';
	return `${tenths(off)} ${off > 0 ? 'more' : 'less'} than worked out`;
}

/** What it does to the waist, all round. mm */
export function waistMoved(moves: number): string {
	if (Math.abs(moves) < 0.05) return 'The waist stays as it is.';
	return `The waist comes out ${tenths(moves)} ${moves > 0 ? 'longer' : 'shorter'}.`;
}
