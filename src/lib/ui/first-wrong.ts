/** What stands in the way comes up where the hand is: the focus goes to the first field that is marked, once the page shows it. */
export function goToFirstWrong(form: HTMLElement): void {
	const wrong = form.querySelector<HTMLElement>('[aria-invalid]');
	// A row of choices is marked as a whole, and one of them takes the focus.
	const field = wrong?.matches('fieldset') ? wrong.querySelector<HTMLElement>('input:checked, input') : wrong;
	// A field in a part that is folded away can't be reached.
	const folded = field?.closest('details');
	if (folded) folded.open = true;
	field?.focus();
}
