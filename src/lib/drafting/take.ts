// Taking a way out: the choices with one of them changed.
import type { WayOut } from './check.ts';

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
