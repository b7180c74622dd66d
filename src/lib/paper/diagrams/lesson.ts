// The drawings a lesson may name, each made from the learner's own draft.
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing } from '../drawing.ts';
import * as back from './back-seam.ts';
import * as casing from './casing.ts';
import { grainBias } from './grain.ts';
import * as hem from './hem.ts';
import * as marking from './marking.ts';
import { measuringDrawing } from './measuring.ts';
import type { Unit } from './number.ts';
import * as prepare from './prepare.ts';
import { sectorDiagram } from './sector.ts';
import * as band from './waistband.ts';
import { zipHidden, zipHiddenBelow, zipLap } from './zip-ways.ts';

type Draw = (draft: Draft, unit: Unit) => Drawing;

const DRAWINGS = {
	'test-seam': prepare.testSeam,
	'straighten-grain': prepare.straightenGrain,
	'cloth-width': prepare.clothWidth,
	'grain-bias': grainBias,
	sector: (draft, unit) => sectorDiagram(draft, { unit, layout: 'whole' }),
	'half-pattern': (draft, unit) => sectorDiagram(draft, { unit, layout: 'half', emphasis: 'fold' }),
	'waist-lines': marking.waistLines,
	'mark-arcs': marking.markArcs,
	'hem-arcs': marking.hemArcs,
	'walk-waist': marking.walkWaist,
	notches: marking.notches,
	staystitch: marking.staystitch,
	'interface-band': back.interfaceBand,
	'neaten-edges': back.neatenEdges,
	'back-seam': back.backSeam,
	'press-open': back.pressOpen,
	'zip-tack': back.zipTack,
	'zip-stitch': back.zipStitch,
	'zip-open': back.zipOpen,
	'zip-lap': zipLap,
	'zip-hidden': zipHidden,
	'zip-hidden-below': zipHiddenBelow,
	'lining-cut': marking.liningCut,
	'lining-opening': back.liningOpening,
	'lining-waist': back.liningWaist,
	'lining-fell': back.liningFell,
	'try-on': band.tryOn,
	'band-pin': band.bandPin,
	'band-stitch': band.bandStitch,
	'band-clip': band.bandClip,
	'band-press': band.bandPress,
	'band-fold': band.bandFold,
	hook: band.hook,
	'side-seam': casing.sideSeam,
	'casing-fold': casing.casingFold,
	'casing-ring': casing.casingRing,
	'casing-pin': casing.casingPin,
	'casing-close': casing.casingClose,
	'elastic-thread': casing.elasticThread,
	'elastic-join': casing.elasticJoin,
	hang: hem.hang,
	'level-mark': hem.levelMark,
	'level-trim': hem.levelTrim,
	'hem-easestitch': hem.hemEasestitch,
	'hem-first-turn': hem.hemFirstTurn,
	'hem-second-turn': hem.hemSecondTurn,
	'thread-chain': hem.threadChain,
	'measure-waist': ({ body }, unit) => measuringDrawing('waist', body.waist, unit),
	'measure-hip': ({ body }, unit) => measuringDrawing('hip', body.hip, unit),
	'measure-waistToHip': ({ body }, unit) => measuringDrawing('waistToHip', body.waistToHip, unit),
	'measure-length': ({ skirt }, unit) => measuringDrawing('length', skirt.length, unit)
} as const satisfies Record<string, Draw>;

export type DrawingName = keyof typeof DRAWINGS;
export const drawingNames = Object.keys(DRAWINGS) as readonly DrawingName[];
export const isDrawingName = (name: string): name is DrawingName => Object.hasOwn(DRAWINGS, name);

/** `name` is one of `drawingNames`: a lesson's text is checked against them when it is read, so another is our own bug. */
export function lessonDrawing(name: string, draft: Draft, { unit }: { readonly unit: Unit }): Drawing {
	if (!isDrawingName(name)) throw new Error(`there is no drawing called "${name}"`);
	const draw: Draw = DRAWINGS[name];
	return draw(draft, unit);
}
