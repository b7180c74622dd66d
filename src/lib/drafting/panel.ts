// The panels round the body, and one panel as a piece: a sector with straight edges, in shell or lining.
import type { Outline } from './geometry/outline.ts';
import { offset } from './geometry/offset.ts';
import { polar, type Point } from './geometry/point.ts';
import type { Notch, Piece } from './piece.ts';
import type { FlaredSkirt } from './skirt.ts';

/**
 * One panel's place round the waist seam. Places run from 0 at centre front to the wearer's left (0.25), centre back
 * (0.5) and right (0.75), and on past 1, so that `from` < `to`. Where the places lie is no angle of the sweep: they are
 * shares of the waist seam.
 */
export interface PanelPlace {
	readonly piece: string;
	readonly copy: number;
	readonly from: number;
	readonly to: number;
	/** The straight edge where the panel begins, and the one where it ends, going round. */
	readonly first: string;
	readonly second: string;
	/** Its share of the sweep, radians. */
	readonly angle: number;
	/** Which of its straight edges lie in the seam with the zip. */
	readonly zip: readonly string[];
}

/** Panels in their order round the body, the first beginning at the seam with the zip. A list, so that they may differ later. */
export function panelPlaces(skirt: FlaredSkirt, sweep: number): readonly PanelPlace[] {
	const { panels, zipAt } = skirt;
	const angle = sweep / panels;
	if (panels === 1) {
		const [first, second] = ['centre back right', 'centre back left'];
		return [{ piece: 'panel', copy: 1, from: 0.5, to: 1.5, first, second, angle, zip: [first, second] }];
	}
	if (panels === 2 && zipAt === 'leftSide') {
		const [left, right] = ['left side', 'right side'];
		return [
			{ piece: 'back', copy: 1, from: 0.25, to: 0.75, first: left, second: right, angle, zip: [left] },
			{ piece: 'front', copy: 1, from: 0.75, to: 1.25, first: right, second: left, angle, zip: [left] }
		];
	}
	const start = zipAt === 'leftSide' ? 0.25 : 0.5;
	const [first, second] = ['first seam', 'second seam'];
	return Array.from({ length: panels }, (_, i) => ({
		piece: 'panel', copy: i + 1, from: start + i / panels, to: start + (i + 1) / panels, first, second, angle,
		zip: i === 0 ? [first] : i === panels - 1 ? [second] : []
	}));
}

const landmarks = [
	{ place: 0, marks: 'centre front', kind: 'single' }, { place: 0.25, marks: 'left side', kind: 'single' },
	{ place: 0.5, marks: 'centre back', kind: 'double' }, { place: 0.75, marks: 'right side', kind: 'single' }
] as const;
type Landmark = (typeof landmarks)[number];

/** The landmark at a place round the waist, if there is one. */
export const landmarkAt = (place: number): Landmark | undefined =>
	landmarks.find((mark) => Math.abs(((place - mark.place + 0.5) % 1) - 0.5) < 1e-9);

/** The landmarks strictly between two places, each with its own place in that stretch. */
export function landmarksBetween(from: number, to: number): readonly { readonly at: number; readonly mark: Landmark }[] {
	const found: { at: number; mark: Landmark }[] = [];
	for (let turn = 0; turn <= 1; turn++) {
		for (const mark of landmarks) {
			const at = mark.place + turn;
			if (at > from + 1e-9 && at < to - 1e-9) found.push({ at, mark });
		}
	}
	return found;
}

export interface PanelSize {
	readonly waistRadius: number;
	readonly hemRadius: number;
	readonly waistAllowance: number;
	readonly seamAllowance: number;
	readonly hemAllowance: number;
	/** How far below the waist seam the seam with the zip starts, where that is known and marked. */
	readonly zipEnd: number | undefined;
}

/** Pieces from places: copies of one piece are drawn once. */
export function panelPieces(places: readonly PanelPlace[], size: PanelSize, cloth: 'shell' | 'lining'): readonly Piece[] {
	const pieces: Piece[] = [];
	for (const place of places) {
		if (place.copy > 1) continue;
		const copies = places.filter((other) => other.piece === place.piece);
		pieces.push(panelPiece(place, copies, places.length, size, cloth));
	}
	return pieces;
}

export const liningName = (piece: string): string => (piece === 'panel' ? 'lining' : `lining ${piece}`);

function panelPiece(place: PanelPlace, copies: readonly PanelPlace[], count: number, size: PanelSize, cloth: 'shell' | 'lining'): Piece {
	const { waistRadius, hemRadius } = size;
	const stitch = sector(place, waistRadius, hemRadius);
	const cut = offset(stitch, ({ name }) => (name === 'waist' ? size.waistAllowance : name === 'hem' ? size.hemAllowance : size.seamAllowance));
	if (!cut) throw new Error(`no cut line round a panel of radius ${waistRadius} with allowances ${size.waistAllowance} and ${size.seamAllowance}`);
	const middle = landmarkAt((place.from + place.to) / 2);
	// Copies that lie at different places have no landmark in common, so only a panel with no twin is cut on the fold.
	const onFold = copies.length === 1 && middle !== undefined;
	// The grain line stops short of both curves.
	const end = (hemRadius - waistRadius) * 0.1;
	return {
		name: cloth === 'lining' ? liningName(place.piece) : place.piece,
		cloth,
		count: copies.length,
		fold: onFold ? { name: middle.marks, from: [waistRadius - size.waistAllowance, 0], to: [hemRadius + size.hemAllowance, 0] } : null,
		grain: count === 1 ? crossGrain(place.angle, waistRadius, hemRadius) : { from: [waistRadius + end, 0], to: [hemRadius - end, 0] },
		stitch,
		cut,
		notches: [...waistNotches(copies), ...zipNotches(copies, size)]
	};
}

/** Counterclockwise: out along the first seam, round the hem, in along the second seam, back round the waist. */
function sector({ first, second, angle }: PanelPlace, waistRadius: number, hemRadius: number): Outline {
	const centre: Point = [0, 0];
	const half = angle / 2;
	const at = (radius: number, side: number): Point => polar(centre, radius, side * half);
	return {
		start: at(waistRadius, -1),
		edges: [
			{ name: first, end: at(hemRadius, -1), centre: null, turn: 0 },
			{ name: 'hem', end: at(hemRadius, 1), centre, turn: angle },
			{ name: second, end: at(waistRadius, 1), centre: null, turn: 0 },
			{ name: 'waist', end: at(waistRadius, -1), centre, turn: -angle }
		]
	};
}

/** One panel alone lies with its back seam along the selvedge, so the grain is square to its middle, below the waist. */
function crossGrain(angle: number, waistRadius: number, hemRadius: number): Piece['grain'] {
	const x = waistRadius + (hemRadius - waistRadius) * 0.4;
	// Inside the hem, and inside the straight edges where they lean in.
	const room = Math.min(Math.sqrt(hemRadius * hemRadius - x * x), angle < Math.PI ? x * Math.tan(angle / 2) : Infinity);
	return { from: [x, -room * 0.7], to: [x, room * 0.7] };
}

/** The waist edge runs back towards the first seam, so the parts are counted from the second. */
function waistNotches(copies: readonly PanelPlace[]): readonly Notch[] {
	return copies.flatMap(({ from, to, copy }) =>
		landmarksBetween(from, to).map(({ at, mark }): Notch => ({
			edge: 'waist', at: (to - at) / (to - from), kind: mark.kind, marks: mark.marks, ...(copies.length > 1 && { copy })
		}))
	);
}

/** The zip's end is marked on both edges of its seam: where the first panel begins and where the last one ends. */
function zipNotches(copies: readonly PanelPlace[], { zipEnd, waistRadius, hemRadius }: PanelSize): readonly Notch[] {
	if (zipEnd === undefined) return [];
	const part = zipEnd / (hemRadius - waistRadius);
	// It reaches the hem: there is no end to mark.
	if (part >= 1 - 1e-9) return [];
	return copies.flatMap(({ zip, first, copy }) =>
		zip.map((edge): Notch => ({ edge, at: edge === first ? part : 1 - part, kind: 'single', marks: 'zip end', ...(copies.length > 1 && { copy }) }))
	);
}
