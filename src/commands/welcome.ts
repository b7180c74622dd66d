// What the person who starts the app reads.
import { relative } from 'node:path';
import { hallAddresses } from '../lib/server/host.ts';
import type { Settings } from '../lib/server/settings.ts';
import type { WayIn } from '../lib/server/way-in.ts';

/** Pairs in two columns, indented. */
function columns(rows: readonly (readonly [string, string])[]): string {
	const width = Math.max(...rows.map(([left]) => left.length)) + 2;
	return rows.map(([left, right]) => `  ${left.padEnd(width)}${right}\n`).join('');
}

function addresses({ host, port, tls, allowedHosts }: Settings): readonly (readonly [string, string])[] {
	const at = (name: string): string => `${tls ? 'https' : 'http'}://${name}${port === (tls ? 443 : 80) ? '' : `:${port}`}`;
	if (host && !['0.0.0.0', '::'].includes(host)) return [['Open', at(host.includes(':') ? `[${host}]` : host)]];
	const hall = [...allowedHosts, ...hallAddresses().filter((address) => !address.startsWith('['))];
	return [['On this computer', at('localhost')], ...hall.map((name) => ['In the hall', at(name)] as const)];
}

export function welcome(settings: Settings, { first, teachers, demo }: WayIn): string {
	const pages = addresses(settings);
	const link = (token: string): string => `${pages[0]![1]}/link/${token}`;
	const parts = [`Skirtwright is open.\n\n${columns(pages)}`];
	if (first) {
		parts.push(`For the first teacher: open this link, then set your name and passphrase.\n\n  ${link(teachers[0]!.token)}\n`);
	} else if (teachers.length > 0) {
		parts.push(`Teachers without a passphrase yet come in by a link:\n\n${columns(teachers.map(({ name, token }) => [name, link(token)]))}`);
	} else {
		parts.push(`Sign in at ${pages[0]![1]}/sign-in with your name and passphrase.\n`);
	}
	if (demo.length > 0) {
		parts.push(`To look round first, there is a demo class. Open each link in a window of its own.\n\n${columns(demo.map(({ name, role, token }) => [`${name}, ${role}`, link(token)]))}`);
	}
	if (first || teachers.length > 0) parts.push('Each link works once, within a week.\n');
	const where = settings.databaseUrl ? 'the database of DATABASE_URL' : relative(process.cwd(), settings.databaseFolder) || settings.databaseFolder;
	parts.push(`The class’s records are in ${where}. To close, press Ctrl+C.\n`);
	return `\n${parts.join('\n')}\n`;
}
