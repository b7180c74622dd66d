// The figures of an uneven skirt that need no outline.
import type { Body } from './body.ts';
import type { Figures } from './draft.ts';
import { leftSide, lengthRange, lengthRound, profileOf, zipPlace, type Profile } from './profile.ts';
import { isUneven, liningShare, type FlaredSkirt } from './skirt.ts';
import { sweepAngle } from './sweep.ts';
import { waistSeamOf } from './waist-seam.ts';

export interface Uneven {
	readonly profile: Profile;
	/** Below the band along the seam with the zip. */
	readonly skirtLength: number;
	readonly told: Pick<Figures, 'shortestLength' | 'longestLength'> & Partial<Figures>;
}

/** Of a skirt that can be cut: a waist that is steeper was refused. */
export function unevenOf(skirt: FlaredSkirt, profile: Profile): Uneven {
	const { radius: length } = lengthRound(skirt);
	const { least, greatest } = lengthRange(skirt);
	const side = leftSide(skirt);
	const four = { Front: 0, SideLeft: side, SideRight: 1 - side, Back: 0.5 };
	const told = (name: string, at: (place: number) => number): Partial<Figures> =>
		Object.fromEntries(Object.entries(four).map(([where, place]) => [name + where, at(place)]));
	return {
		profile, skirtLength: length(zipPlace(skirt)),
		told: {
			...told('length', length), ...told('waistRadius', profile.waist.radius), ...told('hemRadius', profile.hem.radius),
			shortestLength: least, longestLength: greatest
		}
	};
}

/** Of the skirt and of its lining, which may have less flare; null where there is none. */
export interface Profiles {
	readonly shell: Profile;
	readonly lining: Profile | null;
}

/** Null for a skirt whose edges are arcs about the corner; `steep` where its waist is steeper than can be drawn. */
export function profilesOf(body: Body, skirt: FlaredSkirt): Profiles | 'steep' | null {
	if (!isUneven(skirt)) return null;
	const seam = waistSeamOf(body, skirt);
	const shell = profileOf(skirt, seam, sweepAngle(skirt.share));
	const share = liningShare(skirt);
	const lining = skirt.lining ? (share === skirt.share ? shell : profileOf(skirt, seam, sweepAngle(share))) : null;
	return shell && (lining || !skirt.lining) ? { shell, lining } : 'steep';
}
