// The panels round the body, and one panel as a piece: a sector with straight edges, in shell or lining.
import { startPlace } from './closure.ts';
import { foldBackCorners } from './geometry/fold-back.ts';
import type { Outline } from './geometry/outline.ts';
import { offset } from './geometry/offset.ts';
import { polar, type Point } from './geometry/point.ts';
import type { Notch, Piece } from './piece.ts';
import type { Profile } from './profile.ts';
import { roomAcross, shapedOutline, type Shape } from './shape.ts';
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

/** Panels in their order round the body, the first beginning at the seam with the zip; each has its share of waist and flare. */
export function panelPlaces(skirt: FlaredSkirt, sweep: number): readonly PanelPlace[] {
	const { panels, zipAt, panelShares } = skirt;
	if (panels === 1) {
		const [first, second] = ['centre back right', 'centre back left'];
		return [{ piece: 'panel', copy: 1, from: 0.5, to: 1.5, first, second, angle: sweep, zip: [first, second] }];
	}
	if (panelShares) return unequalPlaces(panelShares, zipAt, sweep);
	const angle = sweep / panels;
	if (panels === 2 && zipAt === 'leftSide') {
		const [left, right] = ['left side', 'right side'];
		return [
			{ piece: 'back', copy: 1, from: 0.25, to: 0.75, first: left, second: right, angle, zip: [left] },
			{ piece: 'front', copy: 1, from: 0.75, to: 1.25, first: right, second: left, angle, zip: [left] }
		];
	}
	const start = startPlace(zipAt);
	const [first, second] = ['first seam', 'second seam'];
	return Array.from({ length: panels }, (_, i) => ({
		piece: 'panel', copy: i + 1, from: start + i / panels, to: start + (i + 1) / panels, first, second, angle,
		zip: i === 0 ? [first] : i === panels - 1 ? [second] : []
	}));
}

/** Panels that differ are pieces of their own. A back and a front meet where their shares put the sides. */
function unequalPlaces(shares: readonly number[], zipAt: FlaredSkirt['zipAt'], sweep: number): readonly PanelPlace[] {
	const [left, right] = ['left side', 'right side'];
	const sides = shares.length === 2 && zipAt === 'leftSide';
	// The front lies evenly about centre front, so that its left side is half its share away.
	let from = sides ? shares[1]! / 2 : startPlace(zipAt);
	return shares.map((share, i) => {
		const start = from;
		from += share;
		const place = { copy: 1, from: start, to: from, angle: sweep * share };
		if (sides) return i === 0 ? { ...place, piece: 'back', first: left, second: right, zip: [left] } : { ...place, piece: 'front', first: right, second: left, zip: [left] };
		const [first, second] = ['first seam', 'second seam'];
		return { ...place, piece: `panel ${i + 1}`, first, second, zip: i === 0 ? [first] : i === shares.length - 1 ? [second] : [] };
	});
}

/** Panels of an uneven skirt: each is a piece of its own, with the angle that the profile gives it. Four that meet at the centres and the sides are named by where they lie. */
export function unevenPanels(places: readonly PanelPlace[], profile: Profile): readonly PanelPlace[] {
	const quarters = places.length === 4 && places.every(({ from }) => Math.abs(from * 4 - Math.round(from * 4)) < 1e-9);
	return places.map((place, i) => ({
		...place, angle: profile.angle(place.to) - profile.angle(place.from), copy: 1,
		piece: quarters ? quarterNames[Math.floor((((place.from + place.to) / 2) % 1) * 4)]! : places.length > 1 && place.piece === 'panel' ? `panel ${i + 1}` : place.piece
	}));
}
/** From centre front to the wearer's left and on. */
const quarterNames = ['front left', 'back left', 'back right', 'front right'] as const;

export interface Landmark {
	readonly place: number;
	readonly marks: string;
	readonly kind: Notch['kind'];
}
const quarters: readonly Landmark[] = [
	{ place: 0, marks: 'centre front', kind: 'single' }, { place: 0.25, marks: 'left side', kind: 'single' },
	{ place: 0.5, marks: 'centre back', kind: 'double' }, { place: 0.75, marks: 'right side', kind: 'single' }
];

/** The sides are where a back and a front meet; else a quarter of the waist from the centres. */
export function landmarksOf(places: readonly PanelPlace[]): readonly Landmark[] {
	const [back] = places;
	if (back?.piece !== 'back') return quarters;
	return quarters.map((mark) => ({ ...mark, place: mark.marks === 'left side' ? back.from : mark.marks === 'right side' ? back.to : mark.place }));
}

/** The landmark at a place round the waist, if there is one. */
export const landmarkAt = (place: number, landmarks: readonly Landmark[] = quarters): Landmark | undefined =>
	landmarks.find((mark) => Math.abs(((place - mark.place + 0.5) % 1) - 0.5) < 1e-9);

/** The landmarks strictly between two places, each with its own place in that stretch. */
export function landmarksBetween(from: number, to: number, landmarks: readonly Landmark[] = quarters): readonly { readonly at: number; readonly mark: Landmark }[] {
	const found: { at: number; mark: Landmark }[] = [];
	for (let turn = 0; turn <= 1; turn++) {
		for (const mark of landmarks) {
			const at = mark.place + turn;
			if (at > from + 1e-9 && at < to - 1e-9) found.push({ at, mark });
		}
	}
	return found;
}

/** A piece that follows the panels: a panel itself, its lining, or a facing of its waist or its hem. */
export interface PanelSize {
	readonly waistRadius: number;
	readonly hemRadius: number;
	readonly waistAllowance: number;
	readonly seamAllowance: number;
	readonly hemAllowance: number;
	/** How far below the waist seam the seam with the zip starts, where that is known and marked. */
	readonly zipEnd: number | undefined;
	/** How long the seam with the zip is. */
	readonly seamLength: number;
	/** The outer and the inner arc's names; `hem` and `waist` where nothing is said. */
	readonly outer?: string;
	readonly inner?: string;
	/** The angle of this piece to the panel's: a lining of less flare has less. 1 where nothing is said. */
	readonly narrowed?: number;
	/** Where the curved edges are no arcs about the corner; then the radii above are not used for them. */
	readonly shape?: Shape;
	/** Its hem corners are folded back. */
	readonly foldedBack?: boolean;
}

/** What a piece that follows the panels is: `named` gives its name from the panel's. */
export interface Follows {
	readonly cloth: Piece['cloth'];
	readonly named: (panel: string) => string;
}

/** Pieces from places: copies of one piece are drawn once. Null where one has no room for its allowances. */
export function panelPieces(places: readonly PanelPlace[], size: PanelSize, follows: Follows): readonly Piece[] | null {
	const pieces: Piece[] = [];
	const landmarks = landmarksOf(places);
	for (const place of places) {
		if (place.copy > 1) continue;
		const copies = places.filter((other) => other.piece === place.piece);
		const piece = panelPiece(place, copies, { count: places.length, landmarks }, size, follows);
		if (!piece) return null;
		pieces.push(piece);
	}
	return pieces;
}

const called = (before: string) => (panel: string): string => (panel.startsWith('panel') ? before + panel.slice(5) : `${before} ${panel}`);
export const shell: Follows = { cloth: 'shell', named: (panel) => panel };
export const lining: Follows = { cloth: 'lining', named: called('lining') };
export const waistFacing: Follows = { cloth: 'shell', named: called('waist facing') };
export const hemFacing: Follows = { cloth: 'shell', named: called('hem facing') };

function panelPiece(
	place: PanelPlace, copies: readonly PanelPlace[], round: { readonly count: number; readonly landmarks: readonly Landmark[] }, size: PanelSize, { cloth, named }: Follows
): Piece | null {
	const { inner = 'waist', narrowed = 1 } = size;
	const centre = (place.from + place.to) / 2;
	const [waistRadius, hemRadius] = size.shape ? [size.shape.inner.radius(centre), size.shape.outer.radius(centre)] : [size.waistRadius, size.hemRadius];
	const angle = place.angle * narrowed;
	const shape = size.shape;
	const stitch = panelStitch(place, size);
	const cut = panelCut(stitch, size);
	if (!cut) return null;
	const middle = landmarkAt(centre, round.landmarks);
	// Copies that lie at different places have no landmark in common, so only a panel with no twin is cut on the fold. An
	// uneven skirt is its own mirror image about the centres alone, and only if its sides are alike.
	const onFold = copies.length === 1 && middle !== undefined && (!shape || (shape.profile.symmetric && middle.marks.startsWith('centre')));
	// The grain line stops short of both curves.
	const end = (hemRadius - waistRadius) * 0.1;
	return {
		name: named(place.piece),
		cloth,
		count: copies.length,
		fold: onFold ? { name: middle.marks, from: [waistRadius - size.waistAllowance, 0], to: [hemRadius + size.hemAllowance, 0] } : null,
		grain: round.count === 1 ? crossGrain(angle, waistRadius, hemRadius, shape && ((x) => roomAcross(shape, centre, x))) : { from: [waistRadius + end, 0], to: [hemRadius - end, 0] },
		stitch,
		cut,
		notches: [...(inner === 'waist' ? waistNotches(copies, round.landmarks) : []), ...zipNotches(copies, size)]
	};
}

/** The stitch line of a piece that follows the panel at `place`. */
export function panelStitch(place: PanelPlace, { waistRadius, hemRadius, outer = 'hem', inner = 'waist', narrowed = 1, shape }: PanelSize): Outline {
	return shape ? shapedOutline(shape, place, { inner, outer }) : sector(place, place.angle * narrowed, waistRadius, hemRadius, inner, outer);
}

/** Its cut line; null where there is no room for one. */
export function panelCut(stitch: Outline, { outer = 'hem', inner = 'waist', waistAllowance, hemAllowance, seamAllowance, foldedBack }: PanelSize): Outline | null {
	const cut = offset(stitch, ({ name }) => (name === inner ? waistAllowance : name === outer ? hemAllowance : seamAllowance));
	return cut && foldedBack ? foldBackCorners(stitch, cut, outer, hemAllowance) : cut;
}

/** Counterclockwise: out along the first seam, round the hem, in along the second seam, back round the waist. */
function sector({ first, second }: PanelPlace, angle: number, waistRadius: number, hemRadius: number, inner: string, outer: string): Outline {
	const centre: Point = [0, 0];
	const half = angle / 2;
	const at = (radius: number, side: number): Point => polar(centre, radius, side * half);
	return {
		start: at(waistRadius, -1),
		edges: [
			{ name: first, end: at(hemRadius, -1), centre: null, turn: 0 },
			{ name: outer, end: at(hemRadius, 1), centre, turn: angle },
			{ name: second, end: at(waistRadius, 1), centre: null, turn: 0 },
			{ name: inner, end: at(waistRadius, -1), centre, turn: -angle }
		]
	};
}

/** One panel alone lies with its back seam along the selvedge, so the grain is square to its middle, below the waist. */
function crossGrain(angle: number, waistRadius: number, hemRadius: number, shaped: ((x: number) => number) | undefined): Piece['grain'] {
	const x = waistRadius + (hemRadius - waistRadius) * 0.4;
	// Inside the hem, and inside the straight edges where they lean in.
	const room = Math.min(shaped ? shaped(x) : Math.sqrt(hemRadius * hemRadius - x * x), angle < Math.PI ? x * Math.tan(angle / 2) : Infinity);
	return { from: [x, -room * 0.7], to: [x, room * 0.7] };
}

/** The waist edge runs back towards the first seam, so the parts are counted from the second. */
function waistNotches(copies: readonly PanelPlace[], landmarks: readonly Landmark[]): readonly Notch[] {
	return copies.flatMap(({ from, to, copy }) =>
		landmarksBetween(from, to, landmarks).map(({ at, mark }): Notch => ({
			edge: 'waist', at: (to - at) / (to - from), kind: mark.kind, marks: mark.marks, ...(copies.length > 1 && { copy })
		}))
	);
}

/** The zip's end is marked on both edges of its seam: where the first panel begins and where the last one ends. */
function zipNotches(copies: readonly PanelPlace[], { zipEnd, seamLength }: PanelSize): readonly Notch[] {
	if (zipEnd === undefined) return [];
	const part = zipEnd / seamLength;
	// It reaches the hem: there is no end to mark.
	if (part >= 1 - 1e-9) return [];
	return copies.flatMap(({ zip, first, copy }) =>
		zip.map((edge): Notch => ({ edge, at: edge === first ? part : 1 - part, kind: 'single', marks: 'zip end', ...(copies.length > 1 && { copy }) }))
	);
}
