-- Each closing of an election with its totals and the hash of the ledger's head after it. Two people reopen the canvass:
-- one asks, with a reason, and another does it. The closing stays readable, and the next one says what changed.
create table canvass_closing (
    election_id varchar(60) not null references election,
    closing_no integer not null,
    closed_by varchar(60) references office_user,
    closed_at timestamp with time zone not null,
    ledger_head varchar(64),
    received integer,
    counted integer,
    counted_in_part integer,
    rejected integer,
    reopen_asked_by varchar(60) references office_user,
    reopen_because varchar(4000) default '' not null,
    reopened_by varchar(60) references office_user,
    reopened_at timestamp with time zone,
    version integer not null,
    primary key (election_id, closing_no),
    check (reopen_asked_by <> reopened_by)
);

insert into canvass_closing (election_id, closing_no, closed_at, version)
select election_id, 1, closed_at, 0 from election where closed_at is not null;
