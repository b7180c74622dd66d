import { expect, test } from 'vitest';
import { readLesson } from '../../src/lib/lesson/lesson.ts';
import { checkLesson } from '../../src/lib/lesson/check.ts';

const cover = `---
title: A test
summary: A test
kind: full
style: flared
share: 0.5
panels: 1
waistEase: 10
hipEase: 20
bandDepth: 40
underlap: 30
hem: 15
hemFinish: narrow
zipAt: centreBack
---

Welcome.
`;
const stage = (id: string, body: string, minutes = 5) => `---\nid: ${id}\ntitle: T\nkind: stage\nminutes: ${minutes}\n---\n\n${body}`;
const step = (id: string, rest = '', inside = '<Right>\n\nRight.\n\n</Right>') =>
	`<Step id="${id}" title="T" done="Done" minutes="5" drawing="sector"${rest}>\n\nDo it.\n\n${inside}\n\n</Step>\n`;
const issues = (parts: Record<string, string>, lesson = cover) =>
	checkLesson({ 'lessons/01-test/lesson.md': lesson, ...Object.fromEntries(Object.entries(parts).map(([name, text]) => [`lessons/01-test/${name}`, text])) }, ['sector'])
		.map(({ code, path }) => `${code} ${path.replace('lessons/01-test/', '')}`);

test('A lesson with known names and ids of its own has no issues', () => {
	expect(issues({ '01-a.md': stage('a', step('one', ' needs="clearance"')), '02-b.md': stage('b', step('two')) })).toEqual([]);
});

test.each([
	['an id twice, in two parts', { '01-a.md': stage('a', step('one', ' needs="clearance"')), '02-b.md': stage('b', step('one')) }, 'duplicate-id 02-b.md:8'],
	['a step without Right', { '01-a.md': stage('a', step('one', ' needs="clearance"', 'No more.')) }, 'step-needs-right 01-a.md:8'],
	['a figure nobody works out', { '01-a.md': stage('a', `A <Figure of="kneeGirth" />.\n\n${step('one', ' needs="clearance"')}`) }, 'unknown-figure 01-a.md:8'],
	['a figure that its skirt never has', { '01-a.md': stage('a', `A <Figure of="elasticLength" />.\n\n${step('one', ' needs="clearance"')}`) }, 'not-of-this-skirt 01-a.md:8'],
	['a drawing nobody draws', { '01-a.md': stage('a', `<Drawing of="knee" />\n\n${step('one', ' needs="clearance"')}`) }, 'unknown-drawing 01-a.md:8'],
	['a word nobody explains', { '01-a.md': stage('a', `A <Term of="toile">toile</Term>.\n\n${step('one', ' needs="clearance"')}`) }, 'unknown-term 01-a.md:8'],
	['a sum nobody does', { '01-a.md': stage('a', `<Working of="hip" />\n\n${step('one', ' needs="clearance"')}`) }, 'unknown-working 01-a.md:8'],
	['minutes that are not the sum of its steps', { '01-a.md': stage('a', step('one', ' needs="clearance"'), 9) }, 'minutes-differ 01-a.md:1'],
	['no step that waits for clearance', { '01-a.md': stage('a', step('one')) }, 'one-clearance lesson.md'],
	['a step outside a stage', { '01-a.md': stage('a', step('one', ' needs="clearance"')).replace('kind: stage', 'kind: reading') }, 'reading-with-steps 01-a.md:1']
])('A lesson with %s is told where', (_, parts, expected) => {
	expect(issues(parts as Record<string, string>)).toContain(expected);
});

test('A cover may fix only what a style has, and its least allowances are numbers', () => {
	const good = cover.replace('---\n\nWelcome', 'fixed: share, hemFinish\nleastSeam: 12\n---\n\nWelcome');
	const read = readLesson({ 'lessons/01-test/lesson.md': good });
	expect(read.ok && read.value.style).toMatchObject({ fixed: ['share', 'hemFinish'], least: { waist: 0, seam: 12, hem: 0 } });
	expect(issues({}, good.replace('hemFinish\nleast', 'hemline\nleast').replace('leastSeam: 12', 'leastSeam: wide'))).toEqual(['front-value lesson.md:1', 'front-value lesson.md:1']);
});

test('A cover that leaves out part of the style, or says it in other words, is told', () => {
	expect(issues({}, cover.replace('share: 0.5\n', '').replace('narrow', 'rolled'))).toEqual(
		expect.arrayContaining(['front-value lesson.md:1', 'front-value lesson.md:1'])
	);
	expect(checkLesson({ 'lessons/01-test/01-a.md': stage('a', step('one')) }, ['sector']).map(({ code }) => code)).toContain('lesson-missing');
});
