// What the person who starts the app reads.
import { relative } from 'node:path';
import type { StartLink } from '../lib/server/first-run.ts';
import { hallAddresses } from '../lib/server/host.ts';
import type { Settings } from '../lib/server/settings.ts';

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

export function welcome(settings: Settings, links: readonly StartLink[]): string {
	const pages = addresses(settings);
	const at = (token: string): string => `${pages[0]![1]}/link/${token}`;
	const parts = [`Skirtwright is open.\n\n${columns(pages)}`];
	const first = links.find(({ role }) => role === 'firstTeacher');
	const demo = links.filter(({ role }) => role !== 'firstTeacher');
	parts.push(first
		? `For the first teacher: open this link, then set your name and passphrase.\n\n  ${at(first.token)}\n`
		: `Sign in at ${pages[0]![1]}/sign-in with your name and passphrase.\n`);
	if (demo.length > 0) {
		parts.push(`To look round, there is a demo class. Open each link in a window of its own.\n\n${columns(demo.map(({ name, role, token }) => [`${name}, ${role}`, at(token)]))}`);
	}
	if (links.length > 0) parts.push('Each link works once, within a week. The next start prints new ones.\n');
	const near = relative(process.cwd(), settings.databaseFolder);
	const where = settings.databaseUrl ? 'the database of DATABASE_URL' : near.startsWith('..') ? settings.databaseFolder : near;
	parts.push(`The class’s records are in ${where}. To close, press Ctrl+C.\n`);
	return `\n${parts.join('\n')}\n`;
}
