// What if: two to four skirts for one body, drafted side by side, and what sets each apart from the first.
import type { Body } from './body.ts';
import type { Check } from './check.ts';
import { hemSurplus } from './checks/hem.ts';
import { draftSkirt, type Draft } from './draft.ts';
import { area, bounds } from './geometry/measure.ts';
import type { Piece } from './piece.ts';
import { ok, refuse, type Issue, type Result } from './result.ts';
import type { HemFinish, Skirt } from './skirt.ts';

export interface ClothOnHand {
	/** Between the selvedges, mm. */
	readonly width: number;
}

export interface ClothNeed {
	/** The largest piece, across the grain and along it, mm. */
	readonly across: number;
	readonly along: number;
	/** All that is cut from the outer cloth, mm². */
	readonly area: number;
	/** Whether the largest piece lies within the width; null where no width is known. */
	readonly fits: boolean | null;
	/**
	 * No layout can be shorter, mm: the longest piece, or all the area spread over the whole width. What a layout really
	 * takes is more. Null where no width is known or a piece is wider than the cloth.
	 */
	readonly leastLength: number | null;
}

export interface HemEffort {
	readonly finish: HemFinish;
	/** To ease in all round, mm, and as a share of what it is eased to. */
	readonly surplus: number;
	readonly fraction: number;
}

/** What is told about a skirt that can be cut; lengths mm, areas mm². */
export interface Told {
	readonly hemSweep: number;
	/** Round the hem against round the waist: how much the cloth has to fall into folds. */
	readonly fullness: number;
	readonly panelArea: number;
	readonly cloth: ClothNeed;
	/** For a narrow and a turned hem and the one chosen, at the same hem allowance. */
	readonly hem: readonly HemEffort[];
	/** The zip to buy; 0 when none is needed, null when no hip is known. */
	readonly zip: number | null;
	/** Not fit to cut, then what to think about first. */
	readonly checks: readonly Check[];
}

/** One figure less the first skirt's, mm or mm². */
export type Apart = Readonly<Record<'hemSweep' | 'panelArea' | 'clothArea', number>>;

export interface Compared {
	readonly skirt: Skirt;
	/** Null where it can't be cut: `obstacles` say why. */
	readonly draft: Draft | null;
	readonly obstacles: readonly Issue[];
	readonly told: Told | null;
	/** The choices in which it is otherwise than the first, by their paths. */
	readonly chosen: readonly string[];
	/** Null for the first, and where either can't be cut. */
	readonly apart: Apart | null;
}

export const mostCompared = 4;
/** Cloth as it is sold, mm: from a ribbon loom's to a stage's (from memory). */
export const narrowest = 100;
export const widest = 10_000;
const finishes: readonly HemFinish[] = ['narrow', 'turned'];

export function compareDrafts(body: Body, skirts: readonly Skirt[], cloth?: ClothOnHand): Result<readonly Compared[]> {
	const [first] = skirts;
	if (!first || skirts.length < 2 || skirts.length > mostCompared) {
		return refuse({ code: 'number-out-of-range', path: 'skirts', expected: [2, mostCompared], received: skirts.length, figures: { least: 2, most: mostCompared } });
	}
	if (cloth && !(cloth.width >= narrowest && cloth.width <= widest)) {
		return refuse({ code: 'length-out-of-range', path: 'cloth.width', expected: 'length', received: cloth.width, figures: { least: narrowest, most: widest } });
	}
	const drafted = skirts.map((skirt) => {
		const draft = draftSkirt(body, skirt);
		return draft.ok
			? { skirt, draft: draft.value, obstacles: [], told: tell(draft.value, cloth) }
			: { skirt, draft: null, obstacles: draft.issues, told: null };
	});
	const own = drafted[0]!.told;
	return ok(drafted.map((one, i): Compared => ({
		...one,
		chosen: i === 0 ? [] : otherwise(first, one.skirt),
		apart: i === 0 || !own || !one.told ? null : {
			hemSweep: one.told.hemSweep - own.hemSweep, panelArea: one.told.panelArea - own.panelArea, clothArea: one.told.cloth.area - own.cloth.area
		}
	})));
}

function tell({ figures, skirt, pieces, checks }: Draft, cloth: ClothOnHand | undefined): Told {
	const { hemSweep, hemRadius, sweepAngle, waistSeamGirth } = figures;
	return {
		hemSweep, fullness: hemSweep / waistSeamGirth, panelArea: figures.panelCutArea, cloth: clothNeed(pieces, cloth),
		hem: [...new Set([...finishes, skirt.hemFinish])].map((finish) => ({ finish, ...hemSurplus(finish, hemRadius, sweepAngle, skirt.hem) })),
		zip: skirt.closure === 'none' ? 0 : figures.zipLength ?? null,
		checks: (['stop', 'caution'] as const).flatMap((severity) => checks.filter((check) => check.severity === severity))
	};
}

function clothNeed(pieces: readonly Piece[], cloth: ClothOnHand | undefined): ClothNeed {
	const shell = pieces.filter((piece) => piece.cloth === 'shell');
	const sizes = shell.map(alongGrain);
	const across = Math.max(...sizes.map((size) => size.across));
	const along = Math.max(...sizes.map((size) => size.along));
	const whole = shell.reduce((sum, piece) => sum + piece.count * area(piece.cut), 0);
	const fits = cloth ? across <= cloth.width + 1e-6 : null;
	return { across, along, area: whole, fits, leastLength: cloth && fits ? Math.max(along, whole / cloth.width) : null };
}

/** The box round a piece as it lies on the cloth, its grain along the selvedge. */
function alongGrain({ cut, grain }: Piece): { readonly across: number; readonly along: number } {
	const turn = -Math.atan2(grain.to[1] - grain.from[1], grain.to[0] - grain.from[0]);
	const [c, s] = [Math.cos(turn), Math.sin(turn)];
	const put = ([x, y]: readonly [number, number]): readonly [number, number] => [x * c - y * s, x * s + y * c];
	const { from, to } = bounds({ start: put(cut.start), edges: cut.edges.map((edge) => ({ ...edge, end: put(edge.end), centre: edge.centre && put(edge.centre) })) });
	return { along: to[0] - from[0], across: to[1] - from[1] };
}

/** Dotted paths at which two skirts differ. */
function otherwise(one: unknown, other: unknown, path = 'skirt'): readonly string[] {
	if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return Object.is(one, other) ? [] : [path];
	const keys = [...new Set([...Object.keys(one), ...Object.keys(other)])];
	return keys.flatMap((key) => otherwise((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key], `${path}.${key}`));
}
