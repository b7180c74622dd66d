// Forms send without a full page load when the script is there, and keep everything typed either way.
import { tick } from 'svelte';
import { applyAction, enhance } from '$app/forms';
import type { ActionResult, SubmitFunction } from '@sveltejs/kit';
import { goToFirstWrong } from './first-wrong.ts';

/** What a form is told when nothing answers it: as when the records are away, the page stays with all that is typed on it. */
const unanswered: ActionResult = { type: 'failure', status: 503, data: { issues: [{ code: 'database-away', path: '' }] } };

/** Forms whose answer is still to come. */
const sent = new WeakSet<HTMLFormElement>();

const keep: SubmitFunction = ({ formElement, cancel }) => {
	// Pressed twice, sent once: a second card would end the first while that one is shown.
	if (sent.has(formElement)) return cancel();
	sent.add(formElement);
	return async ({ result, update }) => {
		try {
			// A refusal by the server has a status.
			if (result.type === 'error' && result.status === undefined) await applyAction(unanswered);
			else await update({ reset: false });
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
