-- A row while a server runs over this database; one that finds it there follows a server that was not stopped.
create table server_run (
    only_one smallint primary key check (only_one = 1),
    started_at timestamp with time zone not null
);
