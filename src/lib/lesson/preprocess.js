// Runs after mdsvex, in the build only. A lesson is Markdown and our components with literal attributes: it has no
// script of its own, so the components it may use are imported here. The module script that mdsvex writes for the
// frontmatter is left out: we read it ourselves, and a page needn't carry it twice.

/** Every component a lesson may use; lesson/component.ts lists their attributes. */
const names = ['Calculator', 'Caution', 'Drawing', 'Figure', 'Right', 'Slip', 'Step', 'Term', 'Working'];

/** @returns {import('svelte/compiler').PreprocessorGroup} */
export function lessonPreprocess() {
	return {
		name: 'lesson',
		markup({ content, filename }) {
			if (!filename?.endsWith('.md')) return;
			const imports = names
				.filter((name) => content.includes(`<${name}`))
				.map((name) => `\timport ${name} from '$lib/ui/lesson/${name}.svelte';`);
			return { code: `${content.replace(/<script context="module">[\s\S]*?<\/script>/, '')}\n<script>\n${imports.join('\n')}\n</script>\n` };
		}
	};
}
