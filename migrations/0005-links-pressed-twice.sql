-- SHA-256 of the secret drawn with the page whose button used the link. The same page may press twice and still be let in;
-- another page with the same link may not.
alter table links add column used_with bytea;
