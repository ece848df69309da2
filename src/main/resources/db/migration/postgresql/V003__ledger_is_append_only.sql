-- The server itself refuses to change or remove an entry.
create function refuse_ledger_change() returns trigger language plpgsql as $$
begin
    raise exception 'the ledger is only added to';
end;
$$;

create trigger ledger_is_append_only
    before update or delete on ledger
    for each row execute function refuse_ledger_change();
