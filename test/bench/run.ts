// Runs every bench beside this file and prints one table. A bench is a module whose default export measures and gives rows.
import { readdirSync } from 'node:fs';
import type { Row } from './row.ts';

const own = ['run.ts', 'row.ts'];
const names = readdirSync(new URL('.', import.meta.url)).filter((name) => name.endsWith('.ts') && !own.includes(name)).sort();
const rows: Row[] = [];
for (const name of names) {
	const bench = (await import(new URL(name, import.meta.url).href)) as { readonly default?: () => readonly Row[] | Promise<readonly Row[]> };
	if (!bench.default) continue;
	process.stderr.write(`${name} …\n`);
	rows.push(...(await bench.default()));
}
const number = (figure: number): string => (Math.abs(figure) >= 100 ? Math.round(figure).toLocaleString('en-GB') : figure.toFixed(2));
const table = [
	['what', 'figure', 'goal'],
	...rows.map(({ what, figure, unit, goal, ratioOf }) => [ratioOf ? `${what}, as a share of ${ratioOf}` : what, `${number(figure)} ${unit}`.trim(), goal])
];
const widths = [0, 1].map((column) => Math.max(...table.map((row) => row[column]!.length)));
for (const [what, figure, goal] of table) process.stdout.write(`${what!.padEnd(widths[0]!)}  ${figure!.padStart(widths[1]!)}  ${goal}\n`);
