// The lessons that come with the app, read once from their texts. For the server: the texts would weigh on a page.
import { readShelf, type Lesson } from '$lib/lesson/lesson.ts';

const texts = import.meta.glob<string>('/content/lessons/*/*.md', { query: '?raw', import: 'default', eager: true });
const read = readShelf(texts);
if (!read.ok) throw new Error(`A lesson doesn't read: ${JSON.stringify(read.issues)}`);

export const shelf: readonly Lesson[] = read.value;
export const lessonOf = (slug: string): Lesson | undefined => shelf.find((lesson) => lesson.slug === slug);
