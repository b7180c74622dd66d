// Hand-marking tables: where to put chalk dots so that, joined, they make an arc. Millimetres and radians.

export interface Mark {
	/** 1, 2, 3 … */
	readonly mark: number;
	/** From the line that is measured along, radians. */
	readonly angle: number;
	/** Along that line from the corner; less than nothing beyond the corner. */
	readonly down: number;
	/** Square to it. */
	readonly out: number;
	/** The same, rounded to the ruler. */
	readonly read: { readonly down: number; readonly out: number };
	/** How far the rounded mark lies outside the true line; inside is less than nothing. */
	readonly off: number;
}
export interface ArcTable {
	readonly radius: number;
	readonly marks: readonly Mark[];
	/** How far a straight line from mark to mark leaves the arc, at most. */
	readonly chordError: number;
	/** What the rounding costs: the farthest a mark lies off the line, and how much longer the line becomes. */
	readonly cost: { readonly off: number; readonly longer: number };
}
export interface ArcAsk {
	readonly radius: number;
	readonly from: number;
	readonly to: number;
	/** An allowance beside the far end's edge: the arc runs on through it to the cut line. */
	readonly strip?: number;
	/** The ruler's smallest mark, mm. */
	readonly graduation: number;
}

/** Straight from dot to dot leaves the arc by less than this. */
export const CHORD_ERROR = 0.5;
const sagitta = (radius: number, angle: number): number => radius * (1 - Math.cos(angle / 2));
const roundTo = (mm: number, graduation: number): number => Math.round(mm / graduation) * graduation || 0;

/** The fewest equal steps whose chords stay within the error, at least two. */
function steps(radius: number, angle: number): number {
	const most = 2 * Math.acos(1 - Math.min(1, CHORD_ERROR / radius));
	return Math.max(2, Math.floor(angle / most) + 1);
}

/**
 * An arc within reach of its centre. The last mark is where the arc meets the edge's cut line: the allowance is a
 * parallel strip, so the arc turns on by arcsin(strip / radius), no more.
 */
export function arcTable({ radius, from, to, strip = 0, graduation }: ArcAsk): ArcTable {
	if (!(radius > strip) || !(to > from)) throw new Error(`no arc of radius ${radius} from ${from} to ${to} past a strip of ${strip}`);
	const end = to + Math.asin(strip / radius);
	const count = steps(radius, end - from);
	const step = (end - from) / count;
	const marks = Array.from({ length: count + 1 }, (_, i): Mark => {
		const angle = from + step * i;
		const [down, out] = [radius * Math.cos(angle), radius * Math.sin(angle)];
		const read = { down: roundTo(down, graduation), out: roundTo(out, graduation) };
		return { mark: i + 1, angle, down, out, read, off: Math.hypot(read.down, read.out) - radius };
	});
	// A line that lies outside its arc by `off` is longer by the angle times that.
	const longer = marks.slice(1).reduce((sum, mark, i) => sum + (step * (mark.off + marks[i]!.off)) / 2, 0);
	return { radius, marks, chordError: sagitta(radius, step), cost: { off: Math.max(...marks.map((m) => Math.abs(m.off))), longer } };
}

export interface Ordinate {
	readonly mark: number;
	/** Along the chord from its middle. */
	readonly along: number;
	/** From the chord to the arc. */
	readonly rise: number;
	readonly read: { readonly along: number; readonly rise: number };
	readonly off: number;
}
export interface OrdinateTable {
	readonly radius: number;
	readonly chord: number;
	readonly sagitta: number;
	/** From the middle of the chord to one end; the other side is the same. */
	readonly marks: readonly Ordinate[];
	readonly chordError: number;
	readonly cost: { readonly off: number; readonly longer: number };
}

/**
 * An arc whose centre is off the table, from its chord: y(x) = √(R² − x²) − (R − sagitta). Stands are at whole marks of
 * the ruler, so that only the rise is rounded; the end of the chord is given as it is.
 */
export function ordinates(radius: number, chord: number, graduation: number): OrdinateTable {
	if (!(chord > 0) || chord > 2 * radius) throw new Error(`no chord of ${chord} in a circle of radius ${radius}`);
	const half = chord / 2;
	const low = Math.sqrt(radius * radius - half * half);
	const count = steps(radius, Math.asin(half / radius));
	const wanted = half / count;
	const stand = Math.max(graduation, Math.floor(wanted / graduation) * graduation);
	// The arc steepens away from its middle: stands go closer where a chord between two would leave it by too much.
	const alongs: number[] = [0];
	while (alongs[alongs.length - 1]! < half - 1e-9) {
		const at = alongs[alongs.length - 1]!;
		let next = at + stand;
		while (next > at + graduation && chordLeaves(radius, at, Math.min(next, half)) >= CHORD_ERROR) next -= graduation;
		// A last stand a hair from the end helps nobody.
		const toEnd = next >= half || (next > half - graduation && chordLeaves(radius, at, half) < CHORD_ERROR);
		alongs.push(toEnd ? half : next);
	}
	const marks = alongs.map((along, i): Ordinate => {
		const rise = Math.max(0, Math.sqrt(radius * radius - along * along) - low);
		const read = { along: roundTo(along, graduation), rise: roundTo(rise, graduation) };
		return { mark: i + 1, along, rise, read, off: Math.hypot(read.along, read.rise + low) - radius };
	});
	const turn = (mark: Ordinate): number => Math.asin(mark.along / radius);
	const longer = marks.slice(1).reduce((sum, mark, i) => sum + ((turn(mark) - turn(marks[i]!)) * (mark.off + marks[i]!.off)) / 2, 0);
	const errors = marks.slice(1).map((mark, i) => chordLeaves(radius, marks[i]!.along, mark.along));
	return { radius, chord, sagitta: radius - low, marks, chordError: Math.max(...errors), cost: { off: Math.max(...marks.map((m) => Math.abs(m.off))), longer } };
}

const chordLeaves = (radius: number, a: number, b: number): number => sagitta(radius, Math.asin(Math.min(1, b / radius)) - Math.asin(a / radius));
