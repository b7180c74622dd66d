// A waist that came out longer or shorter than its seam, or that was nicked. G the planned seam, θ the sweep, r = G/θ.
import type { Draft } from '../draft.ts';
import { easesIn } from './as-made.ts';
import { changed, clearOfNick, leastAllowance, leastByZip, mostEase, panelAgain, same, slack, stripFor, type RescueOption } from './option.ts';

const circle = 2 * Math.PI;
/** A stretched edge that is longer by more than this part doesn't steam back flat (common practice, no source). */
const mostDrawn = 0.05;

/**
 * `seam` is what the waist sews to at its planned allowance, longer than G by x. The hem is where it was drawn from the
 * same corner, so a waist whose circle is x/θ larger has a skirt x/θ shorter under it.
 */
export function largeWaist(draft: Draft, seam: number): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { sweepAngle: sweep, waistSeamGirth: planned, skirtLength, hemRadius } = figures;
	const over = seam - planned;
	const nearer = over / sweep;
	const left = skirt.allowances.waist - nearer;
	const edge = seam / sweep - skirt.allowances.waist;
	const options: RescueOption[] = [];
	if (over <= easesIn + slack) options.push(same('ease-in', { ease: over, waistSeam: planned, made: seam }));
	// x/θ nearer to the edge (circle geometry).
	if (left >= leastAllowance - slack) options.push(same('sew-nearer-edge', { nearer, allowance: left, waistSeam: planned, waistRadius: planned / sweep }));
	else {
		const ease = sweep * (edge + leastAllowance) - planned;
		if (ease > 0 && ease <= easesIn + slack) options.push(same('sew-nearer-and-ease', { nearer: skirt.allowances.waist - leastAllowance, allowance: leastAllowance, ease, waistSeam: planned }));
	}
	options.push(...takenIn(draft, seam / sweep, nearer));
	if (skirt.waistEase + over <= mostEase + slack && skirtLength - nearer > 0) {
		options.push(...changed(draft, 'more-ease', { waistEase: skirt.waistEase + over, waistSeam: seam, bandCutLength: figures.bandCutLength + over, skirtLength: hemRadius - seam / sweep }, [
			{ path: 'skirt.waistEase', value: skirt.waistEase + over }, { path: 'skirt.length', value: skirt.length - nearer }
		]));
	}
	return [...options, panelAgain(draft)];
}

/**
 * A wedge taken in at every seam from waist to hem, its point at the corner: what is left is a sector of the smaller sweep
 * G/ρ, with ρ the circle that the waist now lies on (circle geometry).
 */
function takenIn(draft: Draft, radius: number, shorter: number, code: 'take-in' | 'lower-and-take-in' = 'take-in', more: Readonly<Record<string, number>> = {}): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { sweepAngle: sweep, waistSeamGirth: planned, hemRadius } = figures;
	if (radius >= hemRadius) return [];
	const narrower = planned / radius;
	const edges = 2 * skirt.panels;
	return changed(draft, code, {
		...more, edges, atWaist: (radius * (sweep - narrower)) / edges, atHem: (hemRadius * (sweep - narrower)) / edges,
		share: narrower / circle, waistSeam: planned, skirtLength: hemRadius - radius
	}, [{ path: 'skirt.share', value: narrower / circle }, { path: 'skirt.length', value: skirt.length - shorter }]);
}

/** `seam` is what the waist sews to at its planned allowance, shorter than G by x: x/θ deeper mends it (circle geometry). */
export function smallWaist(draft: Draft, seam: number): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { sweepAngle: sweep, waistSeamGirth: planned, skirtLength, hemRadius } = figures;
	const short = planned - seam;
	const deeper = short / sweep;
	const options = [same('sew-deeper', { deeper, fromEdge: skirt.allowances.waist + deeper, waistSeam: planned, waistRadius: planned / sweep, skirtLength })];
	const edges = 2 * skirt.panels;
	const strip = stripFor(short, edges, seam / sweep);
	if (strip !== undefined && skirt.allowances.seam - strip >= leastByZip - slack) {
		options.push(same('let-out', { edges, perEdge: strip, allowance: skirt.allowances.seam - strip, waistSeam: planned }));
	}
	if (skirt.waistEase - short >= 0) {
		options.push(...changed(draft, 'less-ease', { waistEase: skirt.waistEase - short, waistSeam: seam, bandCutLength: figures.bandCutLength - short, skirtLength: hemRadius - seam / sweep }, [
			{ path: 'skirt.waistEase', value: skirt.waistEase - short }, { path: 'skirt.length', value: skirt.length + deeper }
		]));
	}
	return options;
}

/** The edge has grown along itself by x; its circle is where it was, so nothing is sewn deeper. */
export function stretchedWaist(draft: Draft, seam: number): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { waistSeamGirth: planned, waistClip } = figures;
	const over = seam - planned;
	const options = over > mostDrawn * (planned - waistClip) + slack ? [] : [
		same('draw-up', { by: over, edgeFrom: seam - waistClip, edgeTo: planned - waistClip, waistSeam: planned }),
		same('stay-tape', { tape: planned, ease: over, waistSeam: planned })
	];
	if (over <= easesIn + slack) options.unshift(same('ease-in', { ease: over, waistSeam: planned, made: seam }));
	if (skirt.waistEase + over <= mostEase + slack) {
		options.push(...changed(draft, 'more-ease', { waistEase: skirt.waistEase + over, waistSeam: seam, bandCutLength: figures.bandCutLength + over, skirtLength: figures.skirtLength }, [
			{ path: 'skirt.waistEase', value: skirt.waistEase + over }
		]));
	}
	return [...options, panelAgain(draft)];
}

/** A nick `depth` from the waist's cut edge. Past the allowance the waist is sewn below it, on a larger circle. */
export function nickedWaist(draft: Draft, depth: number): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { sweepAngle: sweep, waistSeamGirth: planned, waistRadius, skirtLength } = figures;
	const allowance = skirt.allowances.waist;
	if (depth <= allowance - clearOfNick + slack) return [same('hold-in-allowance', { left: allowance - depth, depth, allowance }), panelAgain(draft)];
	const deeper = depth + clearOfNick - allowance;
	if (deeper >= skirtLength) return [panelAgain(draft)];
	const over = sweep * deeper;
	const shorter = { path: 'skirt.length', value: skirt.length - deeper } as const;
	const numbers = { deeper, fromEdge: depth + clearOfNick, skirtLength: skirtLength - deeper };
	return [
		...(over <= easesIn + slack ? changed(draft, 'lower-and-ease-in', { ...numbers, ease: over, waistSeam: planned, made: planned + over }, [shorter]) : []),
		...takenIn(draft, waistRadius + deeper, deeper, 'lower-and-take-in', numbers),
		...(skirt.waistEase + over <= mostEase + slack ? changed(draft, 'lower-and-more-ease', { ...numbers, waistEase: skirt.waistEase + over, waistSeam: planned + over, bandCutLength: figures.bandCutLength + over }, [
			{ path: 'skirt.waistEase', value: skirt.waistEase + over }, shorter
		]) : []),
		panelAgain(draft)
	];
}
