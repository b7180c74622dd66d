// Lengths that a lesson states the same for everyone: `<Figure mm="5" />`, `within="5 mm"`.
import type { Unit } from '../class/event.ts';

export interface FixedLength {
	readonly whole: string;
	/** `3/16`, to be set as a fraction; absent when there is none. */
	readonly fraction?: string;
	readonly unit: 'mm' | 'cm' | 'in';
}

/** Small things in mm to the half, from 5 cm in cm. In inches to the nearest 1/16, never 0: a tolerance of 1 mm is 1/16 in. */
export function fixedLength(mm: number, unit: Unit): FixedLength {
	if (unit === 'cm') return mm < 50 ? { whole: String(Math.round(mm * 2) / 2), unit: 'mm' } : { whole: String(Math.round(mm) / 10), unit: 'cm' };
	const sixteenths = Math.max(1, Math.round((mm / 25.4) * 16));
	let [over, under] = [sixteenths % 16, 16];
	while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
	const whole = Math.floor(sixteenths / 16);
	return { whole: whole ? String(whole) : '', ...(over && { fraction: `${over}/${under}` }), unit: 'in' };
}
