// Why a teacher should look twice, in a sentence without figures: figures come after flags, and only when opened.
import type { Flag } from '../../class/review.ts';
import type { Measurement } from '../../drafting/body.ts';
import { measurementName } from './measurement.ts';

const isMeasurement = (about: string | undefined): about is Measurement =>
	about === 'waist' || about === 'hip' || about === 'waistToHip' || about === 'length';
const what = (about: string | undefined): string => (isMeasurement(about) ? measurementName(about) : 'Some');

export function flagSays({ code, about }: Flag): string {
	switch (code) {
		case 'readings-apart': return `${what(about)} readings are apart`;
		case 'one-reading': return `${isMeasurement(about) ? measurementName(about) : 'A measurement'} was read once only`;
		case 'changed-since-cleared': return 'A number changed since you cleared it';
		case 'worked-out-differently': return 'Worked out differently since you cleared it';
		case 'stop-check': return 'The draft is not fit to cut yet';
		case 'cut-without-clearance': return 'Ticked as cut before it was cleared';
	}
}
