// Which step comes before and after another, across stages.

interface Steps { readonly id: string; readonly steps: readonly { readonly id: string }[] }

const places = (parts: readonly Steps[]) => parts.flatMap(({ id, steps }) => steps.map((step) => ({ part: id, step: step.id })));
const address = (place: { part: string; step: string } | undefined): string | null => place ? `${place.part}?step=${place.step}` : null;

/** The address, within make/, of the step after this one; of this one when it is the last. */
export function stepAfter(parts: readonly Steps[], step: string): string {
	const all = places(parts);
	const at = all.findIndex((place) => place.step === step);
	return address(all[at + 1] ?? all[at]) ?? '';
}

export function stepBefore(parts: readonly Steps[], step: string): string | null {
	const all = places(parts);
	return address(all[all.findIndex((place) => place.step === step) - 1]);
}
