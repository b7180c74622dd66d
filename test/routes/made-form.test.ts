// A reading on the real thing as a form has it: read, or refused at its own field.
import { expect, test } from 'vitest';
import { readMade, typedMade } from '../../src/routes/skirt/[class]/make/made-form.ts';

const form = (fields: readonly (readonly [string, string])[]): FormData => {
	const data = new FormData();
	for (const [name, value] of fields) data.append(name, value);
	return data;
};

test('One length is kept as it was typed, with what it meant', () => {
	const typed = typedMade(form([['reading', 'waistAfterStaystitch'], ['unit', 'in'], ['length', ' 28 1/2 ']]))!;
	expect(readMade(typed)).toEqual({ ok: true, value: [{ kind: 'made', reading: 'waistAfterStaystitch', lengths: [{ mm: 723.9, typed: '28 1/2' }], unit: 'in' }] });
});

test('The floor is read at its places, and a height that is left empty says: as low as the cloth allows', () => {
	const floor = Array.from({ length: 8 }, (_, i) => String(30 + i / 10));
	const typed = typedMade(form([['reading', 'floor'], ['unit', 'cm'], ...floor.map((text) => ['length', text] as const), ['above', ' ']]))!;
	const read = readMade(typed);
	expect(read.ok && read.value).toMatchObject([{ reading: 'floor', lengths: [{ mm: 300 }, { mm: 301 }, {}, {}, {}, {}, {}, { mm: 307 }] }, { reading: 'hemAbove', lengths: [] }]);
	const chosen = readMade({ ...typed, above: '34' });
	expect(chosen.ok && chosen.value[1]).toEqual({ kind: 'made', reading: 'hemAbove', lengths: [{ mm: 340, typed: '34' }], unit: 'cm' });
});

test('What can’t be read is refused at its own field, all at once', () => {
	const read = readMade({ reading: 'clothAfterWashing', unit: 'cm', lengths: ['x', '0'] });
	expect(read.ok ? [] : read.issues.map(({ code, path }) => [code, path])).toEqual([['not-a-length', 'length.0'], ['length-out-of-range', 'length.1']]);
	expect(readMade({ reading: 'floor', unit: 'cm', lengths: ['30', ''], above: 'high' })).toMatchObject({ ok: false, issues: [{ path: 'length.1' }, { path: 'above' }] });
});

test('A reading that nobody takes is none', () => expect(typedMade(form([['reading', 'hat'], ['length', '1']]))).toBeNull());
