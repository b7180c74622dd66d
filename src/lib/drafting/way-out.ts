// Taking a way out: the input with one choice changed.
import type { Body } from './body.ts';
import type { WayOut } from './check.ts';
import { obstacles } from './cuttable.ts';
import type { Skirt } from './skirt.ts';

/** The skirt, of any style, with the choice at the way's path changed. A path that leads nowhere is our own bug. */
export function takeWayOut<Choices extends object>(skirt: Choices, way: WayOut): Choices {
	const [root, ...keys] = way.path.split('.');
	if (root !== 'skirt' || keys.length === 0) throw new Error(`no way out at ${way.path}`);
	const set = (node: unknown, [key, ...rest]: readonly string[]): unknown => {
		if (key === undefined) return way.value;
		if (typeof node !== 'object' || node === null || !(key in node)) throw new Error(`no way out at ${way.path}`);
		const held: Readonly<Record<string, unknown>> = { ...node };
		return { ...held, [key]: set(held[key], rest) };
	};
	return set(skirt, keys) as Choices;
}

/** Only the ways out that leave a skirt that can be cut. */
export const openWays = (body: Body, skirt: Skirt, ways: readonly WayOut[]): readonly WayOut[] =>
	ways.filter((way) => obstacles(body, takeWayOut(skirt, way)).length === 0);
