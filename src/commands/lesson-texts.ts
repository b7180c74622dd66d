// For the build: each lesson's texts as a map of its own. One map of every part of every lesson would weigh on each page.
import { readdirSync } from 'node:fs';
import type { Plugin } from 'vite';

const shelf = 'virtual:lesson-texts';
const folder = 'content/lessons';
const nameOf = (file: string): string => file.replace(/^\d+-|\.md$/g, '');
/** A module whose default is a map of functions that fetch. */
const mapOf = (entries: readonly (readonly [name: string, from: string])[]): string =>
	`export default {${entries.map(([name, from]) => `${JSON.stringify(name)}: () => import(${JSON.stringify(from)})`).join(',\n')}};`;

export function lessonTexts(): Plugin {
	return {
		name: 'lesson-texts',
		resolveId: (id) => (id === shelf || id.startsWith(`${shelf}/`) ? `\0${id}` : null),
		load(id) {
			if (!id.startsWith(`\0${shelf}`)) return null;
			const lesson = id.slice(shelf.length + 2);
			return lesson === ''
				? mapOf(readdirSync(folder).map((name) => [nameOf(name), `${shelf}/${name}`]))
				: mapOf(readdirSync(`${folder}/${lesson}`).map((file) => [nameOf(file), `/${folder}/${lesson}/${file}`]));
		}
	};
}
