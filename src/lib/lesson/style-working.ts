// A draft's figures, worked, whatever its style.
import type { Unit } from '../class/event.ts';
import type { PleatedDraft } from '../drafting/pleated/draft.ts';
import type { AnyDraft } from '../drafting/style.ts';
import type { TieredDraft } from '../drafting/tiered/draft.ts';
import type { Book } from './recipe.ts';
import { flaredBook, flaredNames } from './recipes/flared.ts';
import { pleatedBook } from './recipes/pleated.ts';
import { tieredBook } from './recipes/tiered.ts';
import { workings, type Working } from './working.ts';

const isTiered = (draft: AnyDraft): draft is TieredDraft => draft.skirt.style === 'tiered';
const isPleated = (draft: AnyDraft): draft is PleatedDraft => draft.skirt.style === 'pleated';

export function anyWorkingsOf(draft: AnyDraft, unit: Unit): readonly Working[] {
	const [book, names]: readonly [Book, readonly string[]] = isTiered(draft) ? tieredBook(draft) : isPleated(draft) ? pleatedBook(draft) : [flaredBook(draft), flaredNames];
	const work = workings(book, unit);
	return names.flatMap((name) => work(name) ?? []);
}
