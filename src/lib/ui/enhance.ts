// Forms send without a full page load when the script is there, and keep everything typed either way.
import { tick } from 'svelte';
import { enhance } from '$app/forms';
import type { SubmitFunction } from '@sveltejs/kit';
import { goToFirstWrong } from './first-wrong.ts';

/** Forms whose answer is still to come. */
const sent = new WeakSet<HTMLFormElement>();

const keep: SubmitFunction = ({ formElement, cancel }) => {
	// Pressed twice, sent once: a second card would end the first while that one is shown.
	if (sent.has(formElement)) return cancel();
	sent.add(formElement);
	return async ({ result, update }) => {
		try {
			await update({ reset: false });
		} finally {
			sent.delete(formElement);
		}
		if (result.type !== 'failure') return;
		await tick();
		goToFirstWrong(formElement);
	};
};

/** `use:kept` on a form. */
export const kept = (form: HTMLFormElement): ReturnType<typeof enhance> => enhance(form, keep);
