-- What a voter reads of the own envelope. The key is a keyed hash; nothing here says whose it is.
create table status_line (
    key_hash varchar(64) primary key check (char_length(key_hash) = 64),
    election_id varchar(60) not null,
    state varchar(20) not null check (state in (
        'received', 'under_review', 'waits_for_you', 'counted', 'counted_in_part', 'rejected', 'sent_on',
        'not_voted')),
    reasons varchar(1000) not null,
    asks varchar(300) not null,
    asks_until timestamp,
    changed_at timestamp with time zone not null
);

create index status_line_by_election on status_line (election_id);
