-- Rows of an outside list that could not be read, as they came, with the list they came in. Number 0 is the streets.
create table set_aside_row (
    election_id varchar(60) not null references election,
    snapshot_no integer not null,
    row_no integer not null,
    list varchar(255) not null,
    line_no integer not null,
    column_name varchar(1000) not null,
    reason varchar(4000) not null,
    as_it_came varchar(1000000) not null,
    primary key (election_id, snapshot_no, row_no)
);

-- Of each list with such rows: how many, their hash, the header they stood under, and who decided to use it without them.
create table set_aside_list (
    election_id varchar(60) not null references election,
    snapshot_no integer not null,
    rows_aside integer not null,
    rows_hash varchar(64) not null,
    header varchar(100000) not null,
    because varchar(1000),
    decided_by varchar(60) references office_user,
    decided_at timestamp with time zone,
    primary key (election_id, snapshot_no),
    check ((because is null) = (decided_by is null))
);
