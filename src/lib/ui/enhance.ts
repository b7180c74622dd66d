// Forms send without a full page load when the script is there, and keep everything typed either way.
import { enhance } from '$app/forms';
import type { SubmitFunction } from '@sveltejs/kit';

const keep: SubmitFunction = () => ({ update }) => update({ reset: false });

/** `use:kept` on a form. */
export const kept = (form: HTMLFormElement): ReturnType<typeof enhance> => enhance(form, keep);
