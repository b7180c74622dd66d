// The least that keeps a tick: Node's own http and the app's two statements, word for word, with nothing checked.
import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import { openDatabase } from '../../../src/lib/server/connection.ts';

const sql = openDatabase(process.env.BARE_DATABASE!);
const [classId, memberId] = [process.env.BARE_CLASS!, process.env.BARE_MEMBER!];

interface Said {
	readonly id: string;
	readonly device: string;
	readonly counter: number;
	readonly body: { readonly kind: string };
}

async function keep(session: string, events: readonly Said[]): Promise<readonly string[]> {
	const digest = createHash('sha256').update(session).digest();
	const [asker] = await sql`
		select s.person_id, s.card_id, s.idle_until, p.name, p.can_teach, m.id as member_id, m.role, m.status, m.name as member_name, c.lesson
		from sessions s
		join people p on p.id = s.person_id
		left join members m on m.person_id = p.id and m.class_id = ${classId}
		left join classes c on c.id = m.class_id
		where s.digest = ${digest} and s.ends_at > now()`;
	const person = asker!.person_id as string;
	const rows = events.map(({ id, device, counter, body: { kind, ...body } }) => ({ id, device, counter, kind, body }));
	const [answer] = await sql`
		with said as (
			select * from jsonb_to_recordset(${sql.json(rows as never)}) as said (id uuid, device text, counter bigint, kind text, body jsonb)
		),
		member as (
			select m.id, m.class_id from members m
			where m.id = ${memberId} and m.status = 'admitted' and m.role <> 'teacher' and (
				m.person_id = ${person}
				or ${false} and exists (
					select from members s where s.class_id = m.class_id and s.person_id = ${person}
					and s.role in ('teacher', 'helper') and s.status = 'admitted'
				)
			)
		),
		added as (
			insert into events (id, member_id, class_id, by_person, device, counter, kind, body)
			select said.id, member.id, member.class_id, ${person}, said.device, said.counter, said.kind, said.body from said, member
			on conflict do nothing
			returning id
		)
		select
			exists(select from member) as member,
			(select coalesce(jsonb_agg(id), '[]') from (
				select id from added
				union all
				select e.id from events e where e.id = any(array(select said.id from said)) and e.member_id = (select member.id from member)
			) as known) as kept`;
	return answer!.kept as readonly string[];
}

const server = createServer((request, response) => {
	const parts: Buffer[] = [];
	request.on('data', (part: Buffer) => parts.push(part));
	request.on('end', () => {
		const { events } = JSON.parse(Buffer.concat(parts).toString()) as { events: readonly Said[] };
		void keep(/skirtwright=(\w+)/.exec(request.headers.cookie ?? '')![1]!, events).then((kept) => {
			const said = JSON.stringify({ kept });
			response.writeHead(200, { 'content-type': 'application/json', 'content-length': Buffer.byteLength(said) }).end(said);
		});
	});
});
server.listen(Number(process.env.PORT), 'localhost', () => process.stdout.write('listening\n'));
process.once('SIGTERM', () => void sql.end({ timeout: 1 }).finally(() => process.exit(0)));
