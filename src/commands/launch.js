// npm start: runs start.ts in this very process. A second one in between would be left over when npm is told to end: npm
// passes that on to its shell alone, and the shell goes without a word to whoever it started (start.ts looks for that).
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

register({ tsconfig: fileURLToPath(new URL('tsconfig.json', import.meta.url)) });
await import('./start.ts');
