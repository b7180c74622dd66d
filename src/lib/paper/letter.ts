// How wide letters are, so that lines can be broken and words kept off each other before a writer sees them.
import type { Face } from './sheet.ts';

/**
 * Thousandths of an em for the characters from space to tilde, read from the fonts' own tables; a test compares them
 * with the files. Kerning is left out: it is under 2 % of a line.
 */
export const ADVANCES: Readonly<Record<Face, readonly number[]>> = {
	read: [
		200, 321, 386, 672, 561, 850, 810, 235, 332, 332, 449, 582, 328, 354, 333, 427, 579, 407, 508, 542, 551,
		508, 538, 507, 551, 524, 333, 328, 582, 582, 582, 538, 849, 733, 659, 699, 765, 636, 614, 751, 839, 409,
		557, 753, 636, 1002, 833, 760, 602, 760, 724, 598, 736, 809, 737, 1089, 706, 714, 656, 333, 427, 333, 582,
		470, 500, 539, 607, 499, 612, 519, 386, 558, 661, 333, 309, 608, 335, 969, 661, 586, 617, 600, 473, 452,
		403, 634, 590, 858, 567, 575, 486, 372, 420, 372, 582
	],
	readStrong: [
		200, 337, 438, 691, 595, 906, 836, 257, 358, 358, 450, 582, 326, 339, 329, 488, 616, 415, 538, 558, 603,
		543, 584, 543, 589, 576, 329, 326, 582, 582, 582, 559, 944, 755, 691, 709, 778, 663, 638, 768, 841, 417,
		576, 784, 648, 987, 837, 777, 653, 787, 744, 613, 746, 785, 757, 1108, 756, 745, 686, 353, 490, 353, 582,
		470, 500, 578, 648, 543, 658, 565, 427, 605, 689, 364, 337, 671, 361, 997, 694, 624, 660, 641, 541, 498,
		438, 676, 622, 900, 603, 611, 533, 369, 441, 369, 582
	],
	label: [
		191, 247, 395, 688, 567, 902, 745, 211, 395, 395, 480, 592, 237, 424, 247, 449, 657, 437, 560, 575, 605,
		578, 611, 536, 611, 611, 247, 247, 572, 572, 572, 436, 886, 701, 652, 685, 736, 595, 575, 732, 750, 293,
		302, 681, 575, 960, 753, 816, 636, 816, 678, 592, 643, 730, 695, 1030, 690, 663, 677, 385, 449, 385, 617,
		412, 600, 527, 592, 491, 581, 527, 401, 545, 575, 265, 263, 554, 261, 873, 575, 598, 592, 586, 404, 459,
		415, 563, 524, 812, 545, 529, 503, 419, 271, 419, 572
	],
	labelStrong: [
		191, 265, 436, 698, 575, 940, 764, 226, 412, 412, 492, 599, 250, 426, 265, 454, 665, 453, 569, 583, 614,
		583, 617, 550, 619, 617, 265, 265, 579, 579, 579, 451, 892, 719, 662, 684, 734, 597, 577, 729, 750, 315,
		320, 699, 581, 964, 750, 814, 649, 814, 692, 601, 646, 729, 710, 1047, 710, 681, 687, 407, 454, 407, 632,
		430, 600, 527, 592, 485, 585, 527, 410, 550, 579, 279, 278, 574, 273, 873, 579, 598, 592, 589, 413, 466,
		423, 571, 543, 831, 568, 549, 516, 446, 283, 446, 579
	],
	heading: [
		191, 280, 472, 706, 582, 973, 781, 240, 427, 427, 503, 605, 262, 428, 280, 459, 672, 467, 578, 590, 622,
		588, 623, 562, 625, 623, 280, 280, 585, 585, 585, 463, 897, 734, 672, 683, 732, 599, 579, 727, 751, 335,
		335, 715, 585, 967, 748, 813, 662, 813, 704, 609, 649, 727, 724, 1062, 728, 698, 696, 427, 459, 427, 646,
		446, 600, 526, 593, 479, 589, 527, 418, 554, 581, 291, 290, 592, 283, 873, 581, 598, 593, 591, 420, 472,
		430, 578, 560, 847, 587, 567, 526, 469, 293, 469, 585
	]
};

/** Any other character is taken as wide as an n: near enough for breaking a line. */
const other = 'n'.charCodeAt(0) - 32;

/** How long a text is, in mm, at a size in points. A fraction's figures are small. */
export function textLength(text: string, face: Face, size: number): number {
	const widths = ADVANCES[face];
	let sum = 0;
	for (const [i, part] of text.split(/(\d+\/\d+)/).entries()) {
		let length = 0;
		for (const letter of part) length += widths[letter.charCodeAt(0) - 32] ?? widths[other]!;
		sum += i % 2 ? length * 0.64 : length;
	}
	return ((sum / 1000) * size * 25.4) / 72;
}

/** Words broken into lines no longer than `width` mm. A word longer than that is broken where it must be. */
export function breakLines(text: string, face: Face, size: number, width: number): readonly string[] {
	const lines: string[] = [];
	let line = '';
	for (const word of text.split(/\s+/).filter(Boolean)) {
		const longer = line ? `${line} ${word}` : word;
		if (textLength(longer, face, size) <= width) {
			line = longer;
			continue;
		}
		if (line) lines.push(line);
		line = '';
		for (const letter of word) {
			if (line && textLength(line + letter, face, size) > width) {
				lines.push(line);
				line = '';
			}
			line += letter;
		}
	}
	return line ? [...lines, line] : lines;
}
