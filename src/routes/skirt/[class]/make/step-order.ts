// Which step comes before and after another, across stages.

interface Steps { readonly id: string; readonly steps: readonly { readonly id: string }[] }

const places = (parts: readonly Steps[]) => parts.flatMap(({ id, steps }) => steps.map((step) => ({ part: id, step: step.id })));
const address = (place: { part: string; step: string } | undefined): string | null => place ? `${place.part}?step=${place.step}` : null;

/** The address, below the skirt's own, of what comes after this step: the next one, and after the last her own page. */
export function stepAfter(parts: readonly Steps[], step: string): string {
	const all = places(parts);
	const next = address(all[all.findIndex((place) => place.step === step) + 1]);
	return next === null ? '' : `/make/${next}`;
}

/** The address, within make/, of the step before. */
export function stepBefore(parts: readonly Steps[], step: string): string | null {
	const all = places(parts);
	return address(all[all.findIndex((place) => place.step === step) - 1]);
}
