-- What else a voter reads of the own envelope: how it came, that it is sealed, that the registration was found. Lines of
-- before say nothing of it until rebuild-status is run. Each ask has its own deadline behind its code; in lines of
-- before it is the earliest of all.
alter table status_line add column source varchar(20);
alter table status_line add column voting_location varchar(200) default '' not null;
alter table status_line add column cast_on date;
alter table status_line add column sealed boolean default false not null;
alter table status_line add column registration_found boolean default false not null;
update status_line
    set asks = replace(asks, ';', '=' || replace(cast(asks_until as varchar(30)), ' ', 'T') || ';')
        || '=' || replace(cast(asks_until as varchar(30)), ' ', 'T')
    where asks <> '' and asks_until is not null;
alter table status_line drop column asks_until;

-- The sessions of deciding bodies, as the board announced them.
create table status_session (
    election_id varchar(60) not null,
    session_no integer not null,
    body varchar(10) not null check (body in ('official', 'board', 'first', 'second')),
    called_for timestamp not null,
    opened boolean not null,
    closed boolean not null,
    primary key (election_id, session_no)
);

insert into status_session (election_id, session_no, body, called_for, opened, closed)
    select election_id, session_no, body, called_for, opened_at is not null, closed_at is not null from board_session;
