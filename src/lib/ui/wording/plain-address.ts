/** On a plain http address in a hall. Neutral: everything works, with less around it. */
export const plainAddress = 'This address is not encrypted. Everything works, but others on this network could look on. Your teacher can tell you about a secure one.';
