// What if: variants of a learner's skirt as the address or the fields name them, beside her own.
import type { ClassRules } from '$lib/class/rules.ts';
import { compareDrafts, narrowest, widest, type Compared } from '$lib/drafting/compare.ts';
import type { Body } from '$lib/drafting/body.ts';
import { parseLength, type Unit } from '$lib/drafting/length.ts';
import type { Issue } from '$lib/drafting/result.ts';
import type { FlaredSkirt } from '$lib/drafting/skirt.ts';
import { isOpen, panelsFor } from './choices.ts';

/** Flares with a name, as fractions of a circle. */
export const flares = [1 / 4, 1 / 3, 3 / 8, 1 / 2, 2 / 3, 3 / 4, 1, 5 / 4, 3 / 2, 2] as const;
export const variantCount = 3;
export const mostPanels = 12;
/** What may be typed for a length and for a cloth's width, mm. */
const limits = { length: [150, 1500], width: [narrowest, widest] } as const;

/** One variant as text; an empty field is as hers. */
export interface VariantText {
	readonly share: string;
	readonly length: string;
	readonly panels: string;
}
export interface WhatIfText {
	readonly variants: readonly VariantText[];
	readonly clothWidth: string;
}

/** What an address says; null where it says nothing of the kind. */
export function whatIfFrom(params: URLSearchParams): WhatIfText | null {
	const at = (key: string): string => (params.get(key) ?? '').slice(0, 64);
	const variants = Array.from({ length: variantCount }, (_, i) => ({ share: at(`share${i + 1}`), length: at(`length${i + 1}`), panels: at(`panels${i + 1}`) }));
	const clothWidth = at('clothWidth');
	return clothWidth !== '' || variants.some(isAsked) ? { variants, clothWidth } : null;
}
const isAsked = ({ share, length, panels }: VariantText): boolean => share !== '' || length !== '' || panels !== '';

export function whatIfParams({ variants, clothWidth }: WhatIfText): URLSearchParams {
	const params = new URLSearchParams();
	variants.forEach((variant, i) => {
		for (const key of ['share', 'length', 'panels'] as const) if (variant[key] !== '') params.set(`${key}${i + 1}`, variant[key]);
	});
	if (clothWidth !== '') params.set('clothWidth', clothWidth);
	return params;
}

/** To begin with: the shares nearest to hers among those with a name of their own. */
export function usualVariants(skirt: FlaredSkirt): WhatIfText {
	const others = [0.25, 0.5, 0.75, 1].filter((share) => Math.abs(share - skirt.share) > 1e-6).slice(0, variantCount);
	return { variants: others.map((share) => ({ share: String(share), length: '', panels: '' })), clothWidth: '' };
}

const outside = (path: string, received: string, least: number, most: number): Issue =>
	({ code: 'number-out-of-range', path, expected: [least, most], received, figures: { least, most } });

/** As many panels as a flare needs: each up to half a circle, so that none laps itself. */
const panelsOf = (share: number): number => (share <= 1 ? panelsFor(share) : Math.ceil(share * 2 - 1e-9));

/** `open`: a variant may be taken over. Else what keeps it to be looked at; `own` is hers, or like it. */
export type Taking = 'open' | 'own' | 'uncut' | 'length' | 'closed' | 'panels';

export interface WhatIf {
	/** Hers first; empty where there is nothing to compare. */
	readonly columns: readonly Compared[];
	/** Whether the learner may take each over, hers among them. */
	readonly takings: readonly Taking[];
	readonly clothWidth?: number;
	/** At `length1` … `length3`, `share1` …, `panels1` …, `clothWidth`. */
	readonly issues: readonly Issue[];
}

export function whatIf(body: Body, own: FlaredSkirt, text: WhatIfText, rules: ClassRules, unit: Unit): WhatIf {
	const issues: Issue[] = [];
	const lengthAt = (typed: string, path: string, [least, most]: readonly [number, number]): number | null => {
		const parsed = parseLength(typed, unit, path);
		if (!parsed.ok) issues.push(...parsed.issues);
		else if (parsed.value.mm >= least && parsed.value.mm <= most) return parsed.value.mm;
		else issues.push({ code: 'length-out-of-range', path, expected: 'length', received: typed, figures: { least, most } });
		return null;
	};
	const skirts = text.variants.flatMap((variant, i): readonly FlaredSkirt[] => {
		if (!isAsked(variant)) return [];
		const before = issues.length;
		const share = variant.share === '' ? own.share : Number(variant.share);
		const isShare = share >= 0.1 && share <= 2;
		if (!isShare) issues.push(outside(`share${i + 1}`, variant.share, 0.1, 2));
		const panels = variant.panels !== '' ? Number(variant.panels) : share === own.share || !isShare ? own.panels : panelsOf(share);
		if (!(Number.isInteger(panels) && panels >= 1 && panels <= mostPanels)) issues.push(outside(`panels${i + 1}`, variant.panels, 1, mostPanels));
		const length = variant.length === '' ? own.length : lengthAt(variant.length, `length${i + 1}`, limits.length);
		return issues.length > before || length === null ? [] : [{ ...own, share, panels, length }];
	});
	const width = text.clothWidth === '' ? null : lengthAt(text.clothWidth, 'clothWidth', limits.width);
	const shared = { issues, ...(width !== null && { clothWidth: width }) };
	if (skirts.length === 0) return { columns: [], takings: [], ...shared };
	const compared = compareDrafts(body, [own, ...skirts], width === null ? undefined : { width });
	if (!compared.ok) return { columns: [], takings: [], issues: [...issues, ...compared.issues] };
	return { columns: compared.value, takings: compared.value.map((column) => takingOf(column, rules)), ...shared };
}

/** A flare is a learner's to choose where her class leaves it open; its panels go with it. A length is measured, not chosen. */
function takingOf({ skirt, chosen, draft }: Compared, rules: ClassRules): Taking {
	if (chosen.length === 0) return 'own';
	if (!draft) return 'uncut';
	if (chosen.includes('skirt.length')) return 'length';
	if (!isOpen(rules, 'share')) return 'closed';
	return chosen.includes('skirt.share') && skirt.panels === panelsFor(skirt.share) ? 'open' : 'panels';
}

/** Why a variant is to look at and not to take over. */
export const lookWords: Readonly<Record<Exclude<Taking, 'open'>, string>> = {
	own: '', uncut: '',
	length: 'To look at: the length is one of your measurements.',
	closed: 'To look at: your class has not left the flare open.',
	panels: 'To look at: the number of panels goes with the flare.'
};
