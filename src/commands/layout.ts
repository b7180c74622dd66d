// npm run --silent layout -- FILE (or - for standard input): pieces and cloth as JSON in, the layout with its proof as JSON out.
// Exits 2 with issues when the question itself can't be taken. What goes in and comes out is told in DEVELOPERS.md.
import { printAnswer } from '../lib/cloth/answer.ts';
import { layOut } from '../lib/cloth/lay-out.ts';
import { checkQuestion } from '../lib/cloth/question.ts';
import { refuse } from '../lib/drafting/result.ts';
import { readJsonFile } from './json-file.ts';

// A reader that has seen enough closes the pipe; that is no mistake.
process.stdout.on('error', () => process.exit(0));
const names = process.argv.slice(2);
const json = names.length > 1 ? refuse({ code: 'one-file', path: '', expected: 'FILE or -', received: names.length }) : await readJsonFile(names[0]);
const question = json.ok ? checkQuestion(json.value) : json;
if (question.ok) {
	const start = performance.now();
	const steps = layOut(question.value, () => performance.now());
	let step = steps.next();
	while (!step.done) step = steps.next();
	process.stdout.write(`${JSON.stringify(printAnswer(step.value, (performance.now() - start) / 1000))}\n`);
} else {
	process.exitCode = 2;
	process.stdout.write(`${JSON.stringify({ issues: question.issues })}\n`);
}
