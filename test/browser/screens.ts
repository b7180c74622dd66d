// Every screen, for each who sees it in a state of its own (the people of the demo class, server/demo.ts).
export interface Screens {
	/** Null: signed out. */
	readonly who: string | null;
	/** After a bar: the button that is pressed first. CLASS, MEMBER (Ines) and CODE stand for the demo class's own. */
	readonly at: readonly string[];
}

const skirt = '/skirt/CLASS';
const room = '/classes/CLASS';
const lesson = '/lessons/lined-half-circle';

export const screens: readonly Screens[] = [
	{
		who: null,
		at: [
			'/', '/sign-in?as=learner', '/sign-in?as=teacher', '/sign-in?as=teacher|Sign in', '/join', '/join|Find my class', '/join/CODE', '/join/none0000', '/card', '/link/none', '/nowhere',
			'/lessons', lesson, `${lesson}?unit=in`, `${lesson}/measure`, `${lesson}/waist-to-radius`, `${lesson}/mark-cut?unit=in`,
			`${lesson}/mend/staystitch`, `${lesson}/mend/staystitch?what=allowance-forgotten&unit=in|Work it out`
		]
	},
	// Nothing measured yet.
	{ who: 'Pia', at: ['/', '/account', skirt, `${skirt}/measure`, `${skirt}/measure/hip`, `${skirt}/draft`, `${skirt}/gate`, `${skirt}/paper`, `${skirt}/openings`] },
	// Readings apart, and has asked.
	{ who: 'Ines', at: [skirt, `${skirt}/measure`, `${skirt}/measure/waist`, `${skirt}/gate`, `${skirt}/make/mark-cut?step=cut-skirt`] },
	// In inches.
	{ who: 'Tamsin', at: [`${skirt}/measure/waist`, `${skirt}/measure/length`, `${skirt}/draft`, `${skirt}/make/mark-cut`, `${skirt}/make/two-lines`] },
	// Returned.
	{ who: 'Jory', at: [skirt, `${skirt}/measure`, `${skirt}/gate`] },
	// Cleared, and sewing.
	{
		who: 'Noor',
		at: [
			skirt, `${skirt}/draft`, `${skirt}/gate`, `${skirt}/make/back-seam-zip`, `${skirt}/make/waistband?whole`, `${skirt}/make/hem?step=stitch-hem`, `${skirt}/make/staystitch?step=measure-waist-edge`, `${skirt}/make/hang-level?step=mark-floor&places=16`, `${skirt}/mend/mark-cut?what=nick-near-hem`, `${skirt}/mend/hang-level?what=hem-dips`,
			`${skirt}/make/measure`, `${skirt}/draft?share1=0.75&length2=55&clothWidth=140`, `${skirt}/paper`, `${skirt}/card`, `${skirt}/card|Make a new card`, `${skirt}/openings`
		]
	},
	{
		who: 'Rosalind',
		at: [
			'/', '/account', '/classes', '/classes/new', '/classes/new|Open the class', room, `${room}/numbers`, `${room}/numbers/MEMBER`, `${room}/numbers/MEMBER|Open the figures`, `${room}/people`, `${room}/change`, `${room}/people/poster`,
			`${room}/people/MEMBER/card`, `${room}/people/MEMBER/card|Make a new card`, `${room}/rules`
		]
	}
];
