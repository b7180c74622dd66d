// Who may do what: one table. Pure; the hook and the server's queries ask it.

export type MemberRole = 'teacher' | 'helper' | 'learner';
/** A visitor is anyone who is not signed in, or not admitted to the class that is asked about. */
export type Role = MemberRole | 'visitor';
/** `own`: what is hers alone. `class`: what belongs to a class in which she has this role. `other`: everything else. */
export type Scope = 'own' | 'class' | 'other';

/** What each resource lets one do. */
export const actions = {
	/** The written lessons. */
	lesson: ['read'],
	/** Her passphrase, her sessions. */
	account: ['read', 'change'],
	/** Own: opening one and listing hers. Class: its table of who is where, without figures; changing its title, dates and seats. */
	class: ['open', 'read', 'join', 'change'],
	rules: ['read', 'change'],
	/** The join code and its poster. */
	code: ['read', 'change'],
	/** Who is in the class. */
	people: ['read', 'admit', 'change', 'remove'],
	/** What a learner comes back with. */
	card: ['print'],
	/** Readings, choices, figures, drawings and paper with them. */
	figures: ['read', 'write'],
	/** Ticks, preferences, asking. */
	progress: ['read', 'write'],
	/** Saying that a hand that was up has been answered. */
	help: ['answer'],
	/** Clearing for cutting, or returning. */
	clearance: ['ask', 'decide'],
	/** Who opened whose figures. */
	openings: ['read']
} as const;

export type Resource = keyof typeof actions;
export type Action<R extends Resource = Resource> = R extends Resource ? (typeof actions)[R][number] : never;
export type Need = { readonly [R in Resource]: { readonly resource: R; readonly action: Action<R> } }[Resource];

const anyone = { lesson: { read: ['own', 'class', 'other'] }, class: { join: ['own', 'class', 'other'] } };
const ownAccount = { account: { read: ['own'], change: ['own'] } };
/** A helper may sew too. */
const ownSkirt = {
	card: { print: ['own'] },
	figures: { read: ['own'], write: ['own'] },
	progress: { read: ['own'], write: ['own'] },
	help: { answer: ['own'] },
	clearance: { ask: ['own'] },
	openings: { read: ['own'] }
};

type Table = Readonly<Record<Role, { readonly [R in Resource]?: Readonly<Record<string, readonly string[]>> }>>;
const allowed: Table = {
	teacher: {
		...anyone,
		...ownAccount,
		class: { open: ['own'], read: ['own', 'class'], join: ['own', 'class', 'other'], change: ['class'] },
		rules: { read: ['class'], change: ['class'] },
		code: { read: ['class'], change: ['class'] },
		people: { read: ['class'], admit: ['class'], change: ['class'], remove: ['class'] },
		card: { print: ['class'] },
		figures: { read: ['class'] },
		progress: { read: ['class'] },
		help: { answer: ['class'] },
		clearance: { decide: ['class'] },
		openings: { read: ['class'] }
	},
	// Sees where everyone is and answers hands; the rest is the teacher's.
	helper: {
		...anyone,
		...ownAccount,
		...ownSkirt,
		class: { read: ['own', 'class'], join: ['own', 'class', 'other'] },
		people: { read: ['class'] },
		progress: { read: ['own', 'class'], write: ['own'] },
		help: { answer: ['own', 'class'] }
	},
	learner: { ...anyone, ...ownAccount, ...ownSkirt, class: { read: ['own'], join: ['own', 'class', 'other'] } },
	visitor: { ...anyone }
};

/** Whether this role may do this action on this resource in this scope. What the table doesn't list is refused. */
export function may(role: Role, need: Need, scope: Scope): boolean {
	const resource = Object.hasOwn(allowed[role], need.resource) ? allowed[role][need.resource] : undefined;
	return resource !== undefined && Object.hasOwn(resource, need.action) && resource[need.action]!.includes(scope);
}
