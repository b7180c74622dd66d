// Reads and answers what is typed into a blank. Fetched with the field itself.
import type { Unit } from '$lib/class/event.ts';
import { parseLength } from '$lib/drafting/length.ts';
import type { Working } from '$lib/lesson/working.ts';
import { lengthSentence } from '$lib/ui/wording/length.ts';
import { answerSentence } from '$lib/ui/wording/slip.ts';

export function answer(text: string, working: Working, unit: Unit): string {
	const read = parseLength(text, unit);
	return read.ok ? answerSentence(working, read.value.mm, unit) : lengthSentence(read.issues[0]!, unit);
}
