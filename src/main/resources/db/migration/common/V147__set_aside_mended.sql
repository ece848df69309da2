-- Rows that were set aside and mended by hand: from which list into which newer one, as they came and as they are now.
create table set_aside_mended (
    election_id varchar(60) not null references election,
    snapshot_no integer not null,
    from_no integer not null,
    list varchar(255) not null,
    line_no integer not null,
    as_it_came varchar(1000000) not null,
    mended varchar(1000000) not null,
    because varchar(1000) not null,
    mended_by varchar(60) not null references office_user,
    mended_at timestamp with time zone not null,
    primary key (election_id, snapshot_no),
    foreign key (election_id, snapshot_no) references snapshot
);
