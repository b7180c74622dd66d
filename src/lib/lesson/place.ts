// Where a lesson's files stand: a numbered folder, then a name.

/** Matches a path's folder, its slug, and the file's name. */
export const place = /(?:^|\/)(\d+-([a-z0-9-]+))\/([a-z0-9-]+\.md)$/;

/** A lesson's address: its folder's name without the number. */
export const slugOf = (path: string): string => place.exec(path)?.[2] ?? '';
