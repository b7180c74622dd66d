// The steps of marking out by hand, in words with the learner's figures.
import type { Draft } from '../drafting/draft.ts';
import { num } from './diagrams/number.ts';
import type { MarkingPlan } from './marking-plan.ts';

export function markingSteps({ figures: f, skirt }: Draft, plan: MarkingPlan, unit: 'cm' | 'in'): readonly string[] {
	const n = (mm: number): string => num(mm, unit);
	const seam = n(skirt.allowances.seam);
	const middle = plan.folded ? 'fold' : 'middle line';
	const edge = skirt.panels > 1 ? 'seam' : 'back';
	const both = plan.folded ? '' : ' Do both sides of the middle line.';
	const walked = f.waistSeamGirth / skirt.panels / (plan.folded ? 2 : 1);
	const start = !plan.folded
		? `Draw a straight middle line for each of the ${skirt.panels} panels, along the grain.`
		: skirt.panels > 1
			? 'Front and back are marked alike. Fold the cloth for each, right sides together. The fold is the centre.'
			: 'Fold the cloth, right sides together. The fold is the centre front.';
	return [
		start,
		...(plan.guides
			? [
				`The corner is out of reach. Draw two guide lines square to the ${middle}, ${n(plan.guides.apart)} apart. The upper one is for the waist cut line, the lower one for the hem.`,
				`From the ${middle} measure out along a guide line, then straight down, and chalk a dot.${both}`,
				plan.guides.waistBelow >= 0.5 ? `The waist stitch line has a guide line of its own, ${n(plan.guides.waistBelow)} below the upper one.` : 'The waist stitch line is measured from the upper guide line.'
			]
			: [cornerStep(plan, middle, seam, n), `From the corner measure down the ${middle}, then straight out, and chalk a dot at each mark of the waist tables on the next sheet.${both}`]),
		`Join the dots: dashes for the stitch line, solid for the cut line. Walk the tape, on its edge, along the stitch line: ${n(walked)} from ${plan.folded ? `fold to ${edge}` : 'seam to seam'}.`,
		`Do the same for the hem. The last marks lie on the ${edge} cut line: join them. The stitch line runs ${seam} inside it.`,
		'Stop. Read “Ready to cut” aloud with a second person. Then cut the solid lines.'
	];
}

function cornerStep(plan: MarkingPlan, middle: string, seam: string, n: (mm: number) => string): string {
	// A half circle on the fold: its back seam runs along the end of the cloth.
	if (plan.folded && Math.abs(plan.half - Math.PI / 2) < 1e-9) return `Mark the corner on the fold, ${seam} from the end of the cloth.`;
	if (plan.above > 0) return `Mark the corner on the ${middle}, ${n(plan.above)} or more from the end of the cloth. “Up” is the other way from the corner.`;
	return `Mark the corner on the ${middle}. It may lie off the cloth, on the table.`;
}
