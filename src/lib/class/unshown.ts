/** Controls, line breaks, and the marks that turn the reading direction: what a line of words that others read can't hold. */
export const unshown = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069\ufeff]/u;
