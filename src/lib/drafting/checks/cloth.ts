// The cloth that a draft is for. Alike for every style.
import type { Check } from '../check.ts';
import type { ClothKind } from '../skirt.ts';

/** The opening, the ease and the walk all take cloth that doesn't stretch. */
export function clothChecks({ clothKind }: { readonly clothKind?: ClothKind }): readonly Check[] {
	if (clothKind !== 'stretch') return [{ code: 'woven-cloth', severity: 'note', figures: {}, waysOut: [] }];
	return [{ code: 'stretch-cloth', severity: 'caution', figures: {}, waysOut: [{ path: 'skirt.clothKind', value: 'woven' }] }];
}
