/** What a load depends on that shows the class's table or part of it (`invalidate`). */
export const TABLE = 'class:table';
