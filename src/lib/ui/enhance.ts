// Forms send without a full page load when the script is there, and keep everything typed either way.
import { tick } from 'svelte';
import { enhance } from '$app/forms';
import type { SubmitFunction } from '@sveltejs/kit';
import { goToFirstWrong } from './first-wrong.ts';

const keep: SubmitFunction = ({ formElement }) => async ({ result, update }) => {
	await update({ reset: false });
	if (result.type !== 'failure') return;
	await tick();
	goToFirstWrong(formElement);
};

/** `use:kept` on a form. */
export const kept = (form: HTMLFormElement): ReturnType<typeof enhance> => enhance(form, keep);
