// A stretch of ruler round one length, its mark where a person with that ruler finds it.
import { rulerMark, rulers, type Graduation } from '../../drafting/ruler.ts';
import { formatLength } from '../../drafting/length.ts';
import type { Drawing, Shape } from '../drawing.ts';
import { goesOn, WIDE } from './part.ts';
import { line, mark, rect, sheet, words } from './shape.ts';

/** How far the stretch reaches to either side, mm: a few numbers of each ruler, wide enough apart to count between. */
const reach: Readonly<Record<Graduation, number>> = { mm: 30, halfCm: 50, eighth: 38.1, sixteenth: 25.4 };
const [top, foot] = [92, 22];
/** A tick is shorter the more often it comes: at numbers, at halves, at quarters, and between. Sheet units. */
const ticks = [30, 23, 17, 12, 8];

function tickLength(divisions: number, graduation: Graduation): number {
	const { perNumber, perLong } = rulers[graduation];
	if (divisions % perNumber === 0) return ticks[0]!;
	if (divisions % perLong === 0) return ticks[1]!;
	if (graduation === 'mm') return ticks[3]!;
	let [part, rank] = [perLong / 2, 2];
	while (divisions % part !== 0) [part, rank] = [part / 2, rank + 1];
	return ticks[rank]!;
}

const steps: Readonly<Record<Graduation, number>> = { mm: 0.1, halfCm: 0.1, eighth: 1 / 8, sixteenth: 1 / 16 };
const divided: Readonly<Record<Graduation, string>> = {
	mm: 'divided to the millimetre', halfCm: 'divided to half a centimetre', eighth: 'divided to an eighth of an inch', sixteenth: 'divided to a sixteenth of an inch'
};

/** `mm` on a ruler with these divisions. Where the length itself lies apart from its mark, a dot shows it. */
export function rulerDrawing(mm: number, graduation: Graduation): Drawing {
	const found = rulerMark(mm, graduation);
	const { division, perNumber, numbered } = rulers[graduation];
	const unit = numbered === 10 ? 'cm' : 'in';
	const from = Math.max(0, found.mm - reach[graduation]);
	const scale = WIDE / (2 * reach[graduation]);
	const x = (at: number): number => (at - from) * scale;
	const shapes: Shape[] = [
		rect([0, foot], [WIDE, top], 'paper'), line([0, top], [WIDE, top], 'edge'), line([0, foot], [WIDE, foot], 'edge'), goesOn([WIDE, foot], [WIDE, top]),
		from > 0 ? goesOn([0, foot], [0, top]) : line([0, foot], [0, top], 'edge')
	];
	for (let n = Math.ceil(from / division - 1e-9); x(n * division) <= WIDE + 1e-9; n++) {
		const at = x(n * division);
		shapes.push(line([at, top], [at, top - tickLength(n, graduation)], 'measure'));
		if (n % perNumber === 0 && at > 14 && at < WIDE - 14) shapes.push(words([at, foot + 12], String(n / perNumber), 'label', { anchor: 'middle' }));
	}
	const at = x(found.mm);
	const reads = formatLength(found.mm, unit, { step: steps[graduation] });
	shapes.push(
		line([at, top + 14], [at, top - tickLength(found.divisions, graduation)], 'cut', true),
		// Near the ruler's end the figure keeps on the sheet.
		words([Math.max(at, 64), top + 24], reads, 'figure', { anchor: 'middle' })
	);
	// Nearer than this the two can't be told apart.
	const apart = Math.abs(found.off) * scale > 4;
	if (apart) shapes.push(mark('dot', [x(mm), top]), mark('dot', [8, 8]), words([18, 3], 'where it was worked out', 'label'));
	return sheet(WIDE, 156, `${reads} on a ruler ${divided[graduation]}.${apart ? ` It was worked out ${Math.abs(found.off).toFixed(1)} mm ${found.off > 0 ? 'less' : 'more'}.` : ''}`, shapes);
}
