// The draft's form: what is left as it was shown stays exactly what was kept.
import { expect, test } from 'vitest';
import { defaultRules } from '../../src/lib/class/gate.ts';
import { ownSkirt } from '../../src/lib/lesson/own-skirt.ts';
import type { FlaredSkirt } from '../../src/lib/drafting/skirt.ts';
import { lessonOf } from '../../src/lib/ui/lesson/shelf.ts';
import { choicesFrom, shownIn, typedFrom, type Typed } from '../../src/routes/skirt/[class]/draft/choices.ts';

const { style } = lessonOf('lined-half-circle')!;
const open = { ...defaultRules, open: { share: true, waistEase: true, bandDepth: true, hemFinish: true } };
const readings = { waist: [740, 742], length: [600, 602] };
const taken = Object.fromEntries(Object.entries(readings).map(([measurement, lengths]) =>
	[measurement, lengths.map((mm, i) => ({ id: `${i}`, mm, typed: '', unit: 'cm', route: 'self', by: 'p', at: i } as const))]));

/** Her skirt, with these choices kept. */
function skirtWith(choices: Parameters<typeof choicesFrom>[2]): FlaredSkirt {
	const { input } = ownSkirt({ ...style, fixed: [] }, open, { readings: taken, choices });
	return input!.skirt as FlaredSkirt;
}
/** The form as a browser without the script sends it: every field, and beside it what was shown. */
function sent(shown: Typed, typed: Typed): FormData {
	const form = new FormData();
	for (const [key, text] of Object.entries({ ...shown, ...typed })) form.set(key, text);
	for (const [key, text] of Object.entries(shown)) form.set(`${key}-shown`, text);
	return form;
}

test('a field that nobody touched comes back as what was kept, to the last digit, in either unit', () => {
	const before = { waistEase: 10, bandDepth: 41.3, hem: 12.34, share: 0.55, panels: 3 };
	for (const unit of ['cm', 'in'] as const) {
		const shown = shownIn(skirtWith(before), unit);
		expect(choicesFrom(typedFrom(sent(shown, {})), open, before, unit)).toEqual({ ok: true, value: before });
		// 1 cm is shown as 3/8 in, which would be 9.525 mm.
		if (unit === 'in') expect(shown.waistEase).toBe('3/8 in');
	}
});

test('what she touched is read, and nothing beside it is; what followed the class still does', () => {
	const shown = shownIn(skirtWith({ waistEase: 10 }), 'in');
	expect(choicesFrom(typedFrom(sent(shown, { bandDepth: '2' })), open, { waistEase: 10 }, 'in')).toEqual({ ok: true, value: { waistEase: 10, bandDepth: 50.8 } });
	expect(choicesFrom(typedFrom(sent(shown, { share: '1' })), open, {}, 'in')).toEqual({ ok: true, value: { share: 1, panels: 2 } });
	expect(choicesFrom(typedFrom(sent(shown, {})), open, {}, 'in')).toEqual({ ok: true, value: {} });
});

test('a form that doesn’t say what it showed is read field by field', () => {
	const form = new FormData();
	form.set('share', '0.75');
	expect(choicesFrom(typedFrom(form), open, {}, 'cm')).toEqual({ ok: true, value: { share: 0.75, panels: 2 } });
	form.set('bandDepth', 'deep');
	expect(choicesFrom(typedFrom(form), open, {}, 'cm')).toMatchObject({ ok: false, issues: [{ code: 'not-a-length', path: 'bandDepth' }] });
});
