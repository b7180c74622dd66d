// What every route needs. A route that is not here is refused, and fails the tests.
import type { Need, Scope } from './permission.ts';

export type Method = 'GET' | 'POST';
/** `anyone`: open to all. Otherwise what the asker must be allowed, and in which scope. */
export type RouteNeed = 'anyone' | (Need & { readonly scope: Scope });
type Needs = Readonly<Partial<Record<Method, RouteNeed>>>;

const own = (need: Need): RouteNeed => ({ ...need, scope: 'own' });
/** In the class that the address names. */
const inClass = (need: Need): RouteNeed => ({ ...need, scope: 'class' });

const readClass = inClass({ resource: 'class', action: 'read' });
const readNumbers = inClass({ resource: 'figures', action: 'read' });
const readMine = own({ resource: 'figures', action: 'read' });
const writeMine = own({ resource: 'figures', action: 'write' });
const myProgress: Needs = { GET: own({ resource: 'progress', action: 'read' }), POST: own({ resource: 'progress', action: 'write' }) };

export const routes: Readonly<Record<string, Needs>> = {
	'/': { GET: 'anyone' },
	'/sign-in': { GET: 'anyone', POST: 'anyone' },
	'/sign-out': { POST: 'anyone' },
	'/link/[token]': { GET: 'anyone', POST: 'anyone' },
	'/card': { GET: 'anyone', POST: 'anyone' },
	'/join': { GET: 'anyone', POST: 'anyone' },
	'/join/[code]': { GET: 'anyone', POST: 'anyone' },
	'/lessons': { GET: 'anyone' },
	'/lessons/[slug]': { GET: 'anyone' },
	'/lessons/[slug]/[part]': { GET: 'anyone' },
	'/lessons/[slug]/mend/[stage]': { GET: 'anyone', POST: 'anyone' },
	'/account': { GET: own({ resource: 'account', action: 'read' }), POST: own({ resource: 'account', action: 'change' }) },

	'/classes': { GET: own({ resource: 'class', action: 'open' }) },
	'/classes/new': { GET: own({ resource: 'class', action: 'open' }), POST: own({ resource: 'class', action: 'open' }) },
	'/classes/[class]': { GET: readClass, POST: inClass({ resource: 'help', action: 'answer' }) },
	'/classes/[class]/change': { GET: inClass({ resource: 'class', action: 'change' }), POST: inClass({ resource: 'class', action: 'change' }) },
	'/classes/[class]/numbers': { GET: readNumbers },
	'/classes/[class]/numbers/[member]': { GET: readNumbers, POST: inClass({ resource: 'clearance', action: 'decide' }) },
	'/classes/[class]/people': { GET: inClass({ resource: 'people', action: 'read' }), POST: inClass({ resource: 'people', action: 'change' }) },
	'/classes/[class]/people/poster': { GET: inClass({ resource: 'code', action: 'read' }) },
	'/classes/[class]/people/[member]/card': { GET: inClass({ resource: 'card', action: 'print' }), POST: inClass({ resource: 'card', action: 'print' }) },
	'/classes/[class]/rules': { GET: inClass({ resource: 'rules', action: 'read' }), POST: inClass({ resource: 'rules', action: 'change' }) },
	'/classes/[class]/paper/[member]/handout.pdf': { GET: readNumbers },
	'/classes/[class]/paper/[member]/pattern.pdf': { GET: readNumbers },

	'/skirt/[class]': myProgress,
	'/skirt/[class]/measure': { GET: readMine },
	'/skirt/[class]/measure/[measurement]': { GET: readMine, POST: writeMine },
	'/skirt/[class]/draft': { GET: readMine, POST: writeMine },
	'/skirt/[class]/gate': { GET: readMine, POST: own({ resource: 'clearance', action: 'ask' }) },
	'/skirt/[class]/make/[part]': myProgress,
	// What is sent is worked with and not kept.
	'/skirt/[class]/mend/[stage]': { GET: readMine, POST: readMine },
	'/skirt/[class]/log': { GET: readMine, POST: own({ resource: 'progress', action: 'write' }) },
	'/skirt/[class]/card': { GET: own({ resource: 'card', action: 'print' }), POST: own({ resource: 'card', action: 'print' }) },
	'/skirt/[class]/paper': { GET: readMine },
	'/skirt/[class]/paper/handout.pdf': { GET: readMine },
	'/skirt/[class]/paper/pattern.pdf': { GET: readMine },
	'/skirt/[class]/openings': { GET: own({ resource: 'openings', action: 'read' }) }
};

/** What a request to this route needs: null when the route is not listed, or not with this method. */
export function needOf(route: string | null, method: string): RouteNeed | null {
	const needs = route !== null && Object.hasOwn(routes, route) ? routes[route] : undefined;
	if (!needs) return null;
	// HEAD and OPTIONS ask no more than GET; anything else unlisted changes things, as POST does.
	const asked: Method = method === 'GET' || method === 'HEAD' || method === 'OPTIONS' ? 'GET' : 'POST';
	return needs[asked] ?? null;
}
