import { unshown } from '../class/unshown.ts';
import { ok, refuse, type Result } from '../drafting/result.ts';

/** A first name or a nickname in any script: trimmed, inner spaces made one, 1 to `atMost` characters. */
export function checkName(typed: string, path: string, atMost = 40): Result<string> {
	const name = typed.normalize('NFC').trim().replace(/\p{Zs}+/gu, ' ');
	const length = [...name].length;
	if (unshown.test(name) || !/[\p{L}\p{N}\p{S}\p{P}]/u.test(name)) {
		return refuse({ code: length === 0 ? 'name-missing' : 'name-unfit', path, received: typed });
	}
	if (length > atMost) return refuse({ code: 'name-long', path, expected: atMost, received: length });
	return ok(name);
}
