// Why a teacher should look twice, in a sentence without figures: figures come after flags, and only when opened.
import type { Flag } from '../../class/review.ts';
import { isMeasurement } from '../../drafting/body.ts';
import { isMadeName } from '../../class/made.ts';
import { madeWhat } from './made-name.ts';
import { measurementName } from './measurement.ts';
import { ruleNames } from './rule.ts';

const what = (about: string | undefined): string => (isMeasurement(about) ? measurementName(about) : 'Some');

export function flagSays({ code, about }: Flag): string {
	switch (code) {
		case 'readings-apart': return `${what(about)} readings are apart`;
		case 'one-reading': return `${isMeasurement(about) ? measurementName(about) : 'A measurement'} was read once only`;
		case 'hip-missing': return 'The hip was not measured, so the opening and the zip are not known';
		case 'gate-unread': return 'Not every line of the gate was read aloud';
		case 'rule-changed': return `${ruleNames(about === undefined ? [] : [about])} changed since you cleared the cut`;
		case 'changed-since-cleared': return 'A number changed since you cleared the cut';
		case 'worked-out-differently': return 'Worked out differently since you cleared the cut';
		case 'stop-check': return 'The draft is not fit to cut yet';
		case 'made-out': return `${isMadeName(about) ? madeWhat[about] : 'A reading on the skirt'} is out by more than the class allows`;
		case 'cut-uncleared': return 'Ticked as cut while it was not cleared';
	}
}
