// The house's own rules, read off the source: who may import whom (DEVELOPERS.md), and pure rooms that compile alone.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const lib = resolve('src/lib');

/** What each room may import besides itself. */
const table: Readonly<Record<string, { readonly rooms: readonly string[]; readonly packages: readonly RegExp[] }>> = {
	'drafting/geometry': { rooms: [], packages: [] },
	drafting: { rooms: ['drafting/geometry'], packages: [] },
	cloth: { rooms: ['drafting', 'drafting/geometry'], packages: [/^clipper-lib$/] },
	class: { rooms: ['drafting'], packages: [/^valibot$/] },
	lesson: { rooms: ['cloth', 'drafting', 'drafting/geometry', 'class'], packages: [/^markdown-it($|\/lib\/)/] },
	paper: { rooms: ['lesson', 'cloth', 'drafting', 'drafting/geometry', 'class'], packages: [] },
	server: { rooms: ['paper', 'lesson', 'cloth', 'drafting', 'drafting/geometry', 'class'], packages: [/./] },
	ui: { rooms: ['paper', 'lesson', 'cloth', 'drafting', 'drafting/geometry', 'class'], packages: [/^svelte($|\/)/, /^qrcode($|\/)/, /^@fontsource/, /^virtual:lesson-texts$/, /^\$app\//, /^@sveltejs\/kit$/] }
};
/** What class may use of drafting: types, readings, and the way issues are told. */
const classMayUse = ['body.ts', 'result.ts', 'reading.ts'];

interface Import {
	readonly file: string;
	readonly from: string;
	readonly room: string;
	readonly target: string;
	readonly onlyTypes: boolean;
}

const files = readdirSync(lib, { recursive: true, encoding: 'utf8' }).map((name) => join(lib, name)).filter((name) => /\.(ts|js|svelte)$/.test(name));

function roomOf(path: string): string {
	const [first = '', second = ''] = relative(lib, path).split('/');
	return first === 'drafting' && second === 'geometry' ? 'drafting/geometry' : first;
}

function importsOf(file: string): readonly Import[] {
	const text = readFileSync(file, 'utf8').replace(/^\s*(\/\/|\*|\/\*).*$/gm, '');
	const found = [...text.matchAll(/\b(?:import|export)\s+(type\s+)?(?:[^'"`;()]*?\sfrom\s*)?['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)/g)];
	return found.map(([, type, named, dynamic]) => {
		const from = named ?? dynamic ?? '';
		const target = from.startsWith('.') ? resolve(dirname(file), from) : from.startsWith('$lib/') ? join(lib, from.slice(5)) : '';
		return { file: relative(lib, file), from, room: roomOf(file), target, onlyTypes: type !== undefined };
	});
}
const imports = files.flatMap(importsOf);

test('There is something to read', () => {
	expect(files.length).toBeGreaterThan(80);
	expect(imports.length).toBeGreaterThan(200);
	expect(imports.some(({ room, target }) => room === 'paper' && roomOf(target) === 'drafting')).toBe(true);
});

test('Every room imports only what its row of the table lets it', () => {
	const broken = imports.filter(({ room, from, target }) => {
		const may = table[room];
		if (!may) return true;
		if (target === '') return !may.packages.some((name) => name.test(from));
		return !target.startsWith(lib) || (roomOf(target) !== room && !may.rooms.includes(roomOf(target)));
	});
	expect(broken.map(({ file, from }) => `${file} imports ${from}`)).toEqual([]);
});

test('Class knows no geometry: of drafting it uses types, readings and issues', () => {
	const broken = imports.filter(({ room, target, onlyTypes }) =>
		room === 'class' && roomOf(target) === 'drafting' && !onlyTypes && !classMayUse.includes(relative(join(lib, 'drafting'), target)));
	expect(broken.map(({ file, from }) => `${file} imports ${from}`)).toEqual([]);
});

test('Imports inside the pure rooms and the server name their file, so that a command runs straight from source', () => {
	const broken = imports.filter(({ room, from, file }) => room !== 'ui' && !file.endsWith('.svelte') && (from.startsWith('$lib/') || (from.startsWith('.') && !/\.(ts|js)$/.test(from))));
	expect(broken.map(({ file, from }) => `${file} imports ${from}`)).toEqual([]);
});

test('The pure rooms reach for no clock and no chance', () => {
	const reaching = files.filter((file) => /^(drafting|cloth|lesson|class|paper)/.test(roomOf(file))).flatMap((file) =>
		[...readFileSync(file, 'utf8').matchAll(/\b(Date\.now|new Date\(\)|Math\.random|performance\.now|crypto\.)/g)].map(([what]) => `${relative(lib, file)} uses ${what}`));
	expect(reaching).toEqual([]);
});

test('At the top there are the folders of the house and no other', () => {
	const tree = /```\n(content\/[^]*?)```/.exec(readFileSync('DEVELOPERS.md', 'utf8'))![1]!;
	const named = [...tree.matchAll(/^(\w+)\//gm)].map(([, name]) => name!);
	// What is made here, and never kept (.gitignore).
	const made = readFileSync('.gitignore', 'utf8').split('\n').filter((line) => line.endsWith('/')).map((line) => line.slice(0, -1));
	const found = readdirSync('.', { withFileTypes: true }).filter((entry) => entry.isDirectory() && !entry.name.startsWith('.') && !made.includes(entry.name));
	expect(found.map(({ name }) => name).toSorted()).toEqual([...new Set(named)].toSorted());
	for (const [, path] of tree.matchAll(/^(src\/\w+)\//gm)) expect(readdirSync('src')).toContain(path!.slice('src/'.length));
});

test('The measurements are listed once, in drafting', () => {
	const lists = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((name) => /\.(ts|svelte)$/.test(name))
		.filter((name) => /'waist'[\s|,]+'hip'[\s|,]+'waistToHip'[\s|,]+'length'|=== 'waistToHip' \|\|/.test(readFileSync(join('src', name), 'utf8')));
	expect(lists).toEqual([join('lib', 'drafting', 'body.ts')]);
});

test('No file is named for a place where anything may go', () => {
	const names = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((name) => /(^|\/)(utils?|helpers?|managers?|services?|common|index)(\.|\/|$)/.test(name));
	expect(names).toEqual([]);
});

test('The pure rooms compile with no DOM and no Node types', () => {
	const path = join(lib, 'tsconfig.pure.json');
	const { config, error } = ts.readConfigFile(path, (name) => ts.sys.readFile(name));
	expect(error).toBeUndefined();
	const { options, fileNames } = ts.parseJsonConfigFileContent(config, ts.sys, lib);
	expect(fileNames.length).toBeGreaterThan(60);
	const diagnostics = ts.getPreEmitDiagnostics(ts.createProgram(fileNames, options));
	expect(diagnostics.map(({ file, start, messageText }) =>
		`${file ? relative(lib, file.fileName) : ''}:${file && start !== undefined ? file.getLineAndCharacterOfPosition(start).line + 1 : ''} ${ts.flattenDiagnosticMessageText(messageText, ' ')}`)).toEqual([]);
}, 60_000);
