-- Who is who, and how each one proves it. Secrets are kept as digests or hashes only.

create table people (
	id uuid primary key,
	-- What she is called: a first name or a nickname is enough.
	name text not null check (char_length(name) between 1 and 40),
	can_teach boolean not null default false,
	-- Only those who sign in with a passphrase have these two.
	sign_in_name text unique,
	passphrase_hash text,
	made_at timestamptz not null default now(),
	check ((sign_in_name is null) = (passphrase_hash is null))
);

-- A link that signs one person in, once. The address carries the secret; here is its SHA-256.
create table links (
	digest bytea primary key,
	person_id uuid not null references people on delete cascade,
	made_at timestamptz not null default now(),
	expires_at timestamptz not null,
	used_at timestamptz
);

-- Failed tries at one account (a person's passphrase, a card's words) from one device; a device that has once proved
-- itself is counted apart from the unknown ones, so that a guesser can't lock the owner out.
create table attempts (
	account text not null,
	device bytea not null,
	failures integer not null,
	proved boolean not null default false,
	last_at timestamptz not null default now(),
	primary key (account, device)
);
