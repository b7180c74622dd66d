-- An event is not taken away either, except while a person's own records are erased: that transaction says so with
--   set local skirtwright.erasing = 'on'
-- and deletes row by row. Nothing empties the whole log.

create function refuse_to_remove() returns trigger language plpgsql as $$
begin
	if tg_op = 'DELETE' and current_setting('skirtwright.erasing', true) = 'on' then
		return old;
	end if;
	raise exception 'events are never removed';
end
$$;
create trigger events_are_never_removed before delete on events for each row execute function refuse_to_remove();
create trigger events_are_never_emptied before truncate on events for each statement execute function refuse_to_remove();
