-- Who agreed to load an election without the rows that could not be read, until a second person loads the same files. The
-- election is not in the office yet.
create table set_aside_agreed (
    election_id varchar(60) not null,
    content_hash varchar(64) not null,
    rows_hash varchar(64) not null,
    because varchar(1000) not null,
    agreed_by varchar(60) not null references office_user,
    agreed_at timestamp with time zone not null,
    primary key (election_id, content_hash, rows_hash)
);
