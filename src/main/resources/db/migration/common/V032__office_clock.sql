-- How far a demonstration's clock is ahead of the machine's (behind where negative), and what it never tells less than.
create table office_clock (
    clock_no integer primary key check (clock_no = 1),
    ahead_millis bigint not null,
    not_before timestamp with time zone not null
);
