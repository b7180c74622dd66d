-- Classes, who is in them, the cards that learners come back with, sessions, and who opened whose figures.

create table classes (
	-- Short and public: it stands in addresses and on hand-outs.
	id text primary key,
	title text not null check (char_length(title) between 1 and 80),
	-- The lesson's folder name without its number.
	lesson text not null,
	first_day date not null,
	last_day date not null,
	rules jsonb not null,
	seats integer not null check (seats between 1 and 100000),
	join_code text unique,
	join_code_expires_at timestamptz,
	made_at timestamptz not null default now(),
	check (last_day >= first_day),
	check ((join_code is null) = (join_code_expires_at is null))
);

create table members (
	id text primary key,
	class_id text not null references classes,
	person_id uuid not null references people,
	role text not null check (role in ('teacher', 'helper', 'learner')),
	status text not null check (status in ('asked', 'admitted', 'removed')),
	name text not null check (char_length(name) between 1 and 40),
	asked_at timestamptz not null default now(),
	unique (class_id, person_id)
);
create index members_of_person on members (person_id);
-- Two people of one name get a letter to tell them apart. A removed one frees hers.
create unique index members_named_apart on members (class_id, lower(normalize(name, NFKC))) where status <> 'removed';

create table cards (
	id uuid primary key,
	member_id text not null references members on delete cascade,
	class_id text not null references classes,
	-- SHA-256 of the secret in the QR.
	secret_digest bytea not null unique,
	-- The first two words find the card within its class; all five, hashed, prove it.
	first_words text not null,
	words_hash text not null,
	made_at timestamptz not null default now(),
	ended_at timestamptz
);
create unique index cards_of_member on cards (member_id) where ended_at is null;
create unique index cards_found_by_words on cards (class_id, first_words) where ended_at is null;

create table sessions (
	-- SHA-256 of the id in the cookie; the id itself is kept nowhere.
	digest bytea primary key,
	person_id uuid not null references people on delete cascade,
	-- The card it began with: when the card ends, so does the session.
	card_id uuid references cards on delete cascade,
	began_at timestamptz not null default now(),
	idle_until timestamptz not null,
	ends_at timestamptz not null
);
create index sessions_of_person on sessions (person_id);
create index sessions_of_card on sessions (card_id);
create index sessions_by_end on sessions (idle_until);

create table openings (
	id bigint generated always as identity primary key,
	member_id text not null references members on delete cascade,
	by_person uuid not null references people,
	-- 'figures' on a screen, or 'paper' with figures on it.
	what text not null check (what in ('figures', 'paper')),
	opened_at timestamptz not null default now()
);
create index openings_of_member on openings (member_id, opened_at);
