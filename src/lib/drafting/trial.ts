// Whether the odd ones can be cut: an uneven skirt, or one whose hem corners are folded back. No formula says so, so it is tried.
import type { Body } from './body.ts';
import type { WayOut } from './check.ts';
import { figuresOf } from './figures.ts';
import { layersOf, type Layer } from './layer.ts';
import { panelCut, panelStitch } from './panel.ts';
import { steepest } from './profile.ts';
import type { Issue } from './result.ts';
import { ringOutlines } from './ring.ts';
import { finishedLengths, isUneven, type FlaredSkirt } from './skirt.ts';
import { takeWayOut } from './take.ts';
import { profilesOf } from './uneven.ts';
import { waistSeamOf } from './waist-seam.ts';

/** A sentence has room for so many. */
const most = 3;

/** Of a skirt that could be cut if it were even and mitred. */
export function trialObstacles(body: Body, skirt: FlaredSkirt): readonly Issue[] {
	const found = trial(body, skirt);
	if (!found) return [];
	const ways = candidates(body, skirt, found).filter((way) => trial(body, takeWayOut(skirt, way))?.code !== found.code);
	return [{ ...found, waysOut: ways.slice(0, most) }];
}

function trial(body: Body, skirt: FlaredSkirt): Issue | null {
	if (!isUneven(skirt) && skirt.hemCorner !== 'foldedBack') return null;
	const profiles = profilesOf(body, skirt);
	if (profiles === 'steep') return { code: 'waist-steep', path: unevenPath(skirt), expected: 'a waist that rises and falls less', received: null };
	const layers = layersOf(skirt, figuresOf(body, skirt, profiles), profiles);
	if (!layers.every((layer) => isCut(layer, false))) return { code: 'uneven-no-room', path: unevenPath(skirt), expected: 'edges that differ less', received: null };
	if (layers.every((layer) => isCut(layer, true))) return null;
	return { code: 'hem-corner-no-room', path: 'skirt.hemCorner', expected: 'mitred', received: 'foldedBack', figures: { hem: skirt.hem, seamAllowance: skirt.allowances.seam } };
}

function isCut({ size, ring, places }: Layer, folded: boolean): boolean {
	if (ring) {
		const { cut, hole } = ringOutlines(size);
		return cut !== null && hole.cut !== null;
	}
	const sized = folded ? size : { ...size, foldedBack: false };
	return places.every((place) => place.copy > 1 || panelCut(panelStitch(place, sized), sized) !== null);
}

const unevenPath = ({ riseAt, waistDip, lengths }: FlaredSkirt): string => (lengths && riseAt === 'waist' ? 'skirt.riseAt' : waistDip ? 'skirt.waistDip' : 'skirt.lengths');

/** What may help, the least change first. */
function candidates(body: Body, skirt: FlaredSkirt, { code }: Issue): readonly WayOut[] {
	if (code === 'hem-corner-no-room') return [{ path: 'skirt.hemCorner', value: 'mitred' }, { path: 'skirt.hem', value: skirt.hem / 2 }];
	const ways: WayOut[] = [];
	if (skirt.lengths && skirt.riseAt === 'waist') ways.push({ path: 'skirt.riseAt', value: 'hem' });
	// cos² falls by 2π times the dip for each turn, at its steepest.
	const deepest = (steepest * waistSeamOf(body, skirt)) / (2 * Math.PI) / 2;
	for (const where of ['front', 'back'] as const) {
		const dip = skirt.waistDip?.[where] ?? 0;
		if (dip > 0) ways.push({ path: `skirt.waistDip.${where}`, value: Math.min(dip / 2, deepest) }, { path: `skirt.waistDip.${where}`, value: 0 });
	}
	// Nearer to the others.
	const four = finishedLengths(skirt);
	for (const where of ['front', 'sideLeft', 'sideRight', 'back'] as const) {
		if (skirt.lengths?.[where] === undefined) continue;
		const others = Object.entries(four).filter(([name]) => name !== where).map(([, length]) => length);
		ways.push({ path: `skirt.lengths.${where}`, value: others.reduce((sum, length) => sum + length, 0) / others.length });
	}
	if (code === 'waist-steep') return ways;
	// A narrower hem runs into itself later; wider panels and more flare have gentler edges.
	if (skirt.hem > 10) ways.push({ path: 'skirt.hem', value: 10 });
	if (skirt.panels > 4) ways.push({ path: 'skirt.panels', value: 4 });
	for (const share of [0.5, 1]) if (skirt.share < share) ways.push({ path: 'skirt.share', value: share });
	return ways;
}
