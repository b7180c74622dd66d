import type { CautionAbout } from '../../lesson/component.ts';

export const cautionNames: Readonly<Record<CautionAbout, string>> = {
	iron: 'Hot iron', steam: 'Steam', needle: 'Needles', pins: 'Pins', 'rotary-cutter': 'Rotary cutter', shears: 'Shears',
	unpicker: 'Unpicker', machine: 'Sewing machine', 'presser-foot': 'Needle and presser foot', cable: 'Cables'
};

/** Said under every caution. */
export const cautionRules = 'Follow the maker’s instructions, the venue’s rules and local law. Get a qualified person where needed.';
