-- What people said and did, one append-only log per member. Nothing here is changed or removed while the class lasts.

create table events (
	position bigint generated always as identity primary key,
	-- Made by the device, so that a repeat is harmless.
	id uuid not null unique,
	member_id text not null references members,
	class_id text not null references classes,
	by_person uuid not null references people,
	device text not null check (char_length(device) between 1 and 64),
	counter bigint not null check (counter >= 0),
	kind text not null,
	body jsonb not null,
	received_at timestamptz not null default now()
);
create index events_of_member on events (member_id, position);
create index events_of_class on events (class_id, position);

create function refuse_to_change() returns trigger language plpgsql as $$
begin
	raise exception 'events are never changed';
end
$$;
create trigger events_are_never_changed before update on events for each row execute function refuse_to_change();
