// The drawing for a way back: stitch line now and new, where to cut and where not, with the numbers in words as well.
import type { Draft } from '../../../drafting/draft.ts';
import type { RescueOption } from '../../../drafting/made/option.ts';
import type { AsMade } from '../../../drafting/made/reading.ts';
import type { RescueDraft } from '../../../drafting/made/rescue.ts';
import type { Drawing } from '../../drawing.ts';
import type { Unit } from '../number.ts';
import * as band from './band.ts';
import { onCloth } from './cloth.ts';
import * as hem from './hem.ts';
import * as lining from './lining.ts';
import * as seam from './seam.ts';
import * as waist from './waist.ts';
import * as zip from './zip.ts';

export interface RescueSheet {
	readonly draft: Draft;
	readonly readings: AsMade;
	readonly found: RescueDraft;
	/** One of `found.options`. */
	readonly option: RescueOption;
	readonly unit: Unit;
}

export function rescueDrawing({ draft, readings, found, option, unit }: RescueSheet): Drawing {
	const { of } = waist;
	if (found.code === 'cloth-short') return onCloth(option, option.draft ?? draft, readings.clothAfterWashing ?? { width: 0, length: 0 }, unit);
	switch (option.code) {
		case 'sew-nearer-edge': case 'sew-nearer-and-ease': case 'band-less-ease': return waist.sewnElsewhere(draft, option, of(option, 'allowance'), unit);
		case 'sew-deeper': case 'sew-lining-deeper': return waist.sewnElsewhere(draft, option, of(option, 'fromEdge'), unit);
		case 'lower-and-ease-in': return waist.sewnElsewhere(draft, option, of(option, 'fromEdge'), unit, readings.nickDepth);
		case 'ease-in': return waist.worked(draft, option, of(option, 'ease'), 'Ease in', unit);
		case 'stay-tape': return waist.worked(draft, option, of(option, 'ease'), 'Sew tape along it and ease in', unit);
		case 'draw-up': return waist.worked(draft, option, of(option, 'by'), 'Draw up the staystitching by', unit);
		case 'more-ease': case 'less-ease': case 'lower-and-more-ease': case 'lower-with-new-band': return waist.newBand(draft, option, unit);
		case 'hold-in-allowance': return waist.heldNick(draft, option, unit);
		case 'take-in': case 'lower-and-take-in': return seam.takenIn(draft, option, unit);
		case 'let-out': case 'let-out-lining': return seam.letOut(option, of(option, 'edges'), unit);
		case 'hold-in-hem': return hem.heldInHem(found, option, unit);
		case 'narrower-hem': case 'faced-hem': return hem.narrower(found, option, unit);
		case 'shorter': case 'shorter-nick-in-hem': return hem.shorter(found, option, unit);
		case 'deeper-band': return hem.deeperBand(draft, option, unit);
		case 'level-lowest': case 'level-chosen': case 'level-narrow': return hem.levelled(found, option, unit);
		case 'buy-longer': case 'longer-slit': case 'less-hip-ease': return zip.shortZip(found, option, unit);
		case 'shorten-zip': case 'longer-opening': case 'trim-at-top': return zip.longZip(found, option, unit);
		case 'trim-lining': case 'deeper-lining-hem': case 'tuck-lining': case 'leave-lining': return lining.longLining(draft, found, option, unit);
		case 'cut-lining-again': return lining.liningAgain(option, unit);
		case 'piece-on': return band.pieced(found, option, unit);
		case 'narrower-ends': case 'smaller-underlap': case 'move-fastening-out': case 'move-fastening-in': case 'let-out-zip-seam': return band.ends(draft, found, option, unit);
		case 'shorter-band': case 'cut-band-again': return band.cutBand(option, unit, draft.figures.bandCutLength);
		case 'cut-panel-again': return waist.panelAgain(found, option, unit);
		case 'less-flare': case 'more-panels': return onCloth(option, option.draft ?? draft, readings.clothAfterWashing ?? { width: 0, length: 0 }, unit);
	}
}
