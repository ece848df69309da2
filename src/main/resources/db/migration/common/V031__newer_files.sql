-- A newer list that would change decided cases waits here for a second person.
create table waiting_list (
    election_id varchar(60) not null,
    snapshot_no integer not null,
    brought_by varchar(60) not null references office_user,
    brought_at timestamp with time zone not null,
    confirmed_by varchar(60) references office_user,
    confirmed_at timestamp with time zone,
    primary key (election_id, snapshot_no),
    foreign key (election_id, snapshot_no) references snapshot,
    check (confirmed_by <> brought_by)
);
