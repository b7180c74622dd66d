// Which tables a draft is marked out from: arcs from the corner, or from a chord where the corner is out of reach.
import type { Draft } from '../drafting/draft.ts';
import { shellPanels } from './diagrams/panel.ts';
import { arcTable, ordinates } from './marking.ts';

/** A table as it is printed: what each row says in mm, already read off the ruler. */
export interface PlannedTable {
	readonly title: string;
	/** Its radius, for the heading. */
	readonly radius: number;
	/** Names of the two measures. */
	readonly first: string;
	readonly second: string;
	readonly rows: readonly { readonly mark: number; readonly first: number; readonly second: number }[];
	/** What the rounding costs: the farthest a mark lies off its line. */
	readonly off: number;
	/** How much longer the line becomes, over the whole sweep. */
	readonly longer: number;
}
export interface MarkingPlan {
	readonly far: boolean;
	/** Every panel lies on a fold: marked from it, or else from the panel's middle to both sides. */
	readonly folded: boolean;
	/** Half a panel's angle at the stitch lines. */
	readonly half: number;
	readonly tables: readonly PlannedTable[];
	/** Where the corner is out of reach: how far the hem's guide line lies below the waist's. */
	readonly guides: { readonly apart: number; readonly waistBelow: number } | null;
	/** The least cloth between the corner and the cloth's end, when the piece reaches back past its corner. */
	readonly above: number;
}

/** A usual tape's length: a compass of tape or string past this is hard to hold true (common practice, no source). */
const REACH = 1500;

export function markingPlan(draft: Draft, graduation: number): MarkingPlan {
	const { figures: f, skirt } = draft;
	const half = f.panelAngle / 2;
	const folded = shellPanels(draft.pieces).every((piece) => piece.fold !== null);
	const seam = skirt.allowances.seam;
	const far = f.cutHemRadius > REACH && half < Math.PI / 3;
	const lines = [
		{ title: 'Waist stitch line', radius: f.waistRadius, strip: 0 },
		{ title: 'Waist cut line', radius: f.cutWaistRadius, strip: seam },
		{ title: 'Hem cut line', radius: f.cutHemRadius, strip: seam }
	];
	const times = 2 * skirt.panels;
	const end = (radius: number, strip: number): number => half + Math.asin(strip / radius);
	const low = (radius: number, strip: number): number => radius * Math.cos(end(radius, strip));
	const tables = lines.map(({ title, radius, strip }): PlannedTable => {
		if (far) {
			const table = ordinates(radius, 2 * radius * Math.sin(end(radius, strip)), graduation);
			return {
				title, radius, first: 'out', second: 'down', off: table.cost.off, longer: table.cost.longer * times,
				rows: table.marks.map(({ mark, read }) => ({ mark, first: read.along, second: read.rise }))
			};
		}
		const table = arcTable({ radius, from: 0, to: half, strip, graduation });
		return {
			title, radius, first: 'down', second: 'out', off: table.cost.off, longer: table.cost.longer * times,
			rows: table.marks.map(({ mark, read }) => ({ mark, first: read.down, second: read.out }))
		};
	});
	const guides = far ? { apart: low(f.cutHemRadius, seam) - low(f.cutWaistRadius, seam), waistBelow: low(f.waistRadius, 0) - low(f.cutWaistRadius, seam) } : null;
	return { far, folded, half, tables, guides, above: Math.max(0, -low(f.cutHemRadius, seam)) };
}
