import type { Draft } from '../../../src/lib/drafting/draft.ts';
import type { AsMade } from '../../../src/lib/drafting/made/reading.ts';
import type { RescueCode } from '../../../src/lib/drafting/made/rescue-code.ts';

/** Readings that are wrong by a little or by a lot. */
export function wrong(code: RescueCode, { figures, skirt }: Draft, random: () => number): AsMade {
	const by = random() < 0.5 ? 1 + 12 * random() : 60 * random();
	const { waistSeamGirth: seam } = figures;
	switch (code) {
		case 'waist-cut-large': return random() < 0.5 ? { radiusDrawn: (seam + by) / figures.sweepAngle } : { waistSeamAfterSewing: seam + by };
		case 'waist-cut-small': return random() < 0.5 ? { radiusDrawn: (seam - by) / figures.sweepAngle } : { waistSeamAfterSewing: seam - by };
		case 'waist-stretched': return { waistEdgeAfterStaystitch: seam - figures.waistClip + by };
		case 'allowance-forgotten': return {};
		case 'nick-near-waist': case 'nick-near-hem': return { nickDepth: by };
		case 'panel-short': return { panelLength: figures.cutHemRadius - figures.cutWaistRadius - by };
		case 'zip-short': return { zipBought: Math.max(20, (figures.openingBelowSeam ?? 100) - by * 1.5) };
		case 'zip-long': return { zipBought: (figures.zipLength ?? 600) + by * 3 };
		case 'lining-tight': return { liningWaist: seam - by };
		case 'lining-long': return { liningAbove: (skirt.lining?.shorterBy ?? 0) - by };
		case 'band-short': return { bandLength: figures.bandCutLength - by };
		case 'band-tight': return { bandWanted: seam + by };
		case 'band-loose': return { bandWanted: seam - by };
		case 'hem-dips': return { floor: Array.from({ length: 8 + Math.floor(9 * random()) }, (_, i) => ({ place: i / 17, distance: 250 + by * random() })), ...(random() < 0.5 && { hemAbove: 320 + skirt.hem }) };
		case 'cloth-short': return { clothAfterWashing: { width: 700 + 800 * random(), length: 600 + 2500 * random() } };
	}
}
