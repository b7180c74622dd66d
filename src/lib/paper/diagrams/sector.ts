// The learner's draft, drawn to scale with its numbers: half a panel on the fold with a ruler, or panels side by side.
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing } from '../drawing.ts';
import { shellPanels } from './panel.ts';
import type { Unit } from './number.ts';
import { halfOnFold } from './sector-half.ts';
import { panelsWhole } from './sector-whole.ts';

export type Emphasis = 'waist' | 'hem' | 'fold' | 'seam' | 'none';
export interface SectorOptions {
	readonly unit: Unit;
	readonly layout: 'half' | 'whole';
	/** The line the hand goes to next. */
	readonly emphasis?: Emphasis;
	/** An earlier draft, drawn as it was. */
	readonly before?: Draft;
}

/** `half` shows a panel cut on the fold as it lies on folded cloth; panels without a fold are shown whole either way. */
export function sectorDiagram(draft: Draft, options: SectorOptions): Drawing {
	const panels = shellPanels(draft.pieces);
	const [first] = panels;
	if (!first) throw new Error(`a draft with ${draft.pieces.length} pieces has no skirt panel to draw`);
	const single = panels.length === 1 && first.fold && options.layout === 'half';
	return single ? halfOnFold(draft, first, options) : panelsWhole(draft, panels, options);
}
