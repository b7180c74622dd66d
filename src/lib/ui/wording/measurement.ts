// The measurements: what they are called, how each is taken, and what is asked about a reading.
import type { BodyMeasurement, Measurement } from '../../drafting/body.ts';
import type { Unit } from '../../drafting/length.ts';
import type { Question } from '../../drafting/measurement.ts';
import { long } from './long.ts';

const names: Readonly<Record<Measurement | BodyMeasurement, string>> = { waist: 'Waist', hip: 'Hip', waistToHip: 'Waist to hip', waistToFloor: 'Waist to floor', length: 'Finished length' };
export const measurementName = (measurement: Measurement | BodyMeasurement): string => names[measurement];

/** One line to go by while the tape is held, and the rest for whoever wants it. Common practice, no source, unless it says so. */
export const measurementGuide: Readonly<Record<Measurement, { readonly short: string; readonly more: readonly string[] }>> = {
	waist: {
		short: 'Tie a tape where the band is to sit, and measure along it.',
		more: [
			'Stand, breathe out gently, and keep the tape level and snug.',
			'There are several waists: the narrowest place, the navel, where a belt settles. They can differ by 14 cm (5 1/2 in). Choose one and keep to it.',
			'Sit to measure if the skirt is to be worn seated.'
		]
	},
	hip: {
		short: 'Measure level round the fullest part.',
		more: ['Turn once and check that the tape is level all the way.', 'The skirt’s opening has to let this number through.', 'Measure over thin clothes, with empty pockets.']
	},
	waistToHip: {
		short: 'Measure down the side, from the waist tape to the hip tape.',
		more: ['Leave both tapes on while you take it.', 'If the two sides differ, say so to your teacher: the skirt can follow.']
	},
	length: {
		short: 'Measure from the band’s top edge down to where the hem is to be.',
		more: ['The band stands above the waist line, so begin there.', 'Wear the shoes that go with the skirt, and look straight ahead while someone else reads the tape.']
	}
};

/** A reading that is worth a second look. Asked, never forced: both answers are fine. */
export function questionSentence({ code, figures, measurement }: Question, unit: Unit): string {
	const given = long(figures.given, unit);
	const guess = long(figures.guess, unit);
	const name = names[measurement].toLowerCase();
	switch (code) {
		case 'slip-by-ten': return `${given} looks like a slip. Did you mean ${guess}?`;
		case 'units-mixed': return `${given} looks like the other unit. Did you mean ${long(figures.guess, 'cm')} (${long(figures.guess, 'in')})?`;
		case 'digits-swapped': return `${given} is far from the ${long(figures.earlier, unit)} before. Did two figures change places: ${guess}?`;
		case 'unusual': return `${given} is rare for ${name}. Is the tape where it should be?`;
		case 'waist-over-hip': return `The waist (${long(figures.waist, unit)}) is larger than the hip (${long(figures.hip, unit)}). That may well be so. Are they the right way round?`;
	}
}
