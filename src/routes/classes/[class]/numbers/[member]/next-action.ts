// What a teacher may ask for when she returns numbers: one thing to do, made from the flags.
import type { Flag } from '$lib/class/review.ts';

const names: Readonly<Record<string, string>> = { waist: 'the waist', hip: 'the hip', waistToHip: 'from waist to hip', length: 'the finished length' };

const anyone = 'Read the gate aloud once more, with a second person.';

/** `noTouch`: she asked that no one measures her. */
function actionFor({ code, about = '' }: Flag, noTouch: boolean): string {
	const what = names[about] ?? 'it';
	const how = noTouch ? 'by yourself or on a skirt that fits' : 'with a partner';
	switch (code) {
		case 'readings-apart': return `Measure ${what} again, ${how}.`;
		case 'one-reading': return `Measure ${what} a second time.`;
		case 'stop-check': return 'Read the line in bold under your draft, and take one of its ways out.';
		case 'hip-missing': return `Measure the hip, twice, ${how}.`;
		case 'gate-unread': return anyone;
		case 'rule-changed':
		case 'changed-since-cleared': return 'Read your new numbers back to me.';
		case 'worked-out-differently': return 'Read your figures back to me before you cut.';
		case 'made-out': return 'Bring me the piece before you go on.';
		case 'cut-uncleared': return 'Bring me what is cut before you sew it.';
	}
}

/** The flags' own first, then what fits anyone. */
export const nextActions = (flags: readonly Flag[], noTouch: boolean): readonly string[] =>
	[...new Set([...flags.map((flag) => actionFor(flag, noTouch)), anyone])];
