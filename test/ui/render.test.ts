// What the kit's components are without a script: rendered on the server.
import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import ChoiceRow from '../../src/lib/ui/ChoiceRow.svelte';
import Length from '../../src/lib/ui/Length.svelte';
import LengthField from '../../src/lib/ui/LengthField.svelte';
import Mast from '../../src/lib/ui/Mast.svelte';
import Qr from '../../src/lib/ui/Qr.svelte';
import ReadingTape from '../../src/lib/ui/ReadingTape.svelte';
import Saved from '../../src/lib/ui/Saved.svelte';
import Tape from '../../src/lib/ui/Tape.svelte';
import { qrOf } from '../../src/lib/ui/qr.ts';

const html = ({ body }: { body: string }): string =>
	body.replaceAll(/<!--.*?-->/g, '').replaceAll(/ class="([^"]*?)\s?svelte-\w+"/g, ' class="$1"').replaceAll(/\s+/g, ' ');
/** As it is listened to: without tags, and without what is hidden from listeners. */
const heard = (markup: string): string =>
	markup.replaceAll(/<(\w+)[^>]*aria-hidden="true"[^>]*>.*?<\/\1>/g, '').replaceAll(/<[^>]*>/g, '').replaceAll(/\s+/g, ' ').trim();

test('a length in inches is seen as a fraction and heard in words', () => {
	const shown = html(render(Length, { props: { mm: 727.075, unit: 'in' } }));
	expect(shown).toContain('28<span class="fraction" aria-hidden="true">5/8</span>');
	expect(heard(shown)).toBe('28 and five eighths inches');
});

test('a length in centimetres is heard with its unit, and bare without', () => {
	expect(heard(html(render(Length, { props: { mm: 725, unit: 'cm' } })))).toBe('72.5 centimetres');
	expect(heard(html(render(Length, { props: { mm: 725, unit: 'cm', bare: true } })))).toBe('72.5');
});

test('only a number that is yours has the ticked underline', () => {
	expect(html(render(Length, { props: { mm: 725, unit: 'cm', yours: true } }))).toMatch(/class="[^"]*yours"/);
	expect(html(render(Length, { props: { mm: 725, unit: 'cm' } }))).not.toContain('yours');
});

test('a length field keeps what was typed, and its sentence is tied to it', () => {
	const shown = html(render(LengthField, { props: { label: 'Waist', name: 'waist', unit: 'cm', value: 'about <72>', issues: ['Write a length.'] } }));
	expect(shown).toContain('value="about &lt;72>"');
	expect(shown).toMatch(/inputmode="decimal"/);
	expect(shown).not.toContain('type="number"');
	const [, described] = /aria-describedby="([^"]*)"/.exec(shown)!;
	const [issue] = described!.split(' ');
	expect(shown).toContain(`id="${issue}"`);
	expect(shown).toContain('aria-invalid="true"');
	expect(heard(shown)).toContain('Write a length.');
});

test('a length field reads back what came to it, before any script', () => {
	expect(heard(html(render(LengthField, { props: { label: 'Waist', name: 'waist', unit: 'in', value: '28½' } })))).toContain('28 and a half in, that is 72.4 cm');
});

test('the eighths are keys in inches, and there are none in centimetres', () => {
	expect(html(render(LengthField, { props: { label: 'Waist', name: 'waist', unit: 'in', value: '28 3/4' } })).match(/<button/g)).toHaveLength(7);
	expect(html(render(LengthField, { props: { label: 'Waist', name: 'waist', unit: 'in', value: '28 3/4' } }))).toMatch(/aria-pressed="true"[^>]*><span[^>]*>3\/4</);
	expect(html(render(LengthField, { props: { label: 'Waist', name: 'waist', unit: 'cm' } }))).not.toContain('<button');
});

test('the tape says where she is and how much is done', () => {
	const stages = [{ title: 'Prepare', steps: 4, done: 4 }, { title: 'Zip', steps: 7, done: 4 }, { title: 'Hem', steps: 5, done: 0 }];
	expect(heard(html(render(Tape, { props: { stages, here: { stage: 1, step: 4 } } })))).toBe('Stage 2 of 3, Zip, step 5 of 7. 8 of 16 steps done.');
	expect(heard(html(render(Tape, { props: { stages, here: null } })))).toBe('8 of 16 steps done.');
});

test('the tape is out as far as each stage is done', () => {
	const shown = html(render(Tape, { props: { stages: [{ title: 'Prepare', steps: 4, done: 4 }, { title: 'Zip', steps: 8, done: 2 }, { title: 'Hem', steps: 5, done: 0 }], here: null } }));
	expect([...shown.matchAll(/pulled[^>]*inline-size: (\d+)%/g)].map(([, width]) => width)).toEqual(['100', '25', '0']);
});

test('the readings are told in words to whoever can’t see the pins', () => {
	expect(html(render(ReadingTape, { props: { readings: [723.9, 730.25], unit: 'in' } }))).toContain('aria-label="2 readings: 28 1/2 in, 28 3/4 in. 1/4 in apart."');
});

test('the saved line has no time before the reader’s own clock is known to it', () => {
	expect(heard(html(render(Saved, { props: { state: { waiting: 0, savedAt: null, kept: true, trouble: 'none' } } })))).toBe('');
});

test('the place one is in is marked for listeners too', () => {
	const shown = html(render(Mast, { props: { mast: {}, places: [{ href: '/lessons', label: 'Lessons' }, { href: '/account', label: 'Account' }], path: '/lessons/half' } }));
	expect(shown).toMatch(/href="\/lessons" aria-current="true"/);
	expect(shown.match(/aria-current/g)).toHaveLength(1);
});

test('a row of choices is one radio group, with the chosen one checked', () => {
	const shown = html(render(ChoiceRow, { props: { legend: 'Share', name: 'share', value: 'half', choices: [{ value: 'half', label: 'half' }, { value: 'full', label: 'full' }] } }));
	expect(shown.match(/type="radio"/g)).toHaveLength(2);
	expect(shown.match(/checked/g)).toHaveLength(1);
});

test('a square code is as large as its standard says and has its three corners', () => {
	// ISO/IEC 18004: version v has 17 + 4v squares a side; each finder pattern's edge is seven dark squares.
	const { rows } = qrOf('https://hall.test/card#abcdefghijklmnopqrstuvwxyz');
	expect((rows.length - 17) % 4).toBe(0);
	expect(rows[0]!.slice(0, 8)).toBe('11111110');
	expect(rows[0]!.slice(-8)).toBe('01111111');
	expect(rows.at(-1)!.slice(0, 8)).toBe('11111110');
	expect(html(render(Qr, { props: { modules: { rows }, label: 'Code' } }))).toContain(`viewBox="0 0 ${rows.length + 8} ${rows.length + 8}"`);
});
