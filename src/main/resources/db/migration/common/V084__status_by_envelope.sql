-- Lines of the look-up are of an envelope, because two may have the same receipt number. Whose line one of before is,
-- nobody can tell but by its receipt; it reads on until the envelope's case changes or rebuild-status is run.
create table status_line_of_envelope (
    key_hash varchar(64) not null check (char_length(key_hash) = 64),
    envelope_hash varchar(64) not null check (char_length(envelope_hash) = 64),
    receipt_hash varchar(64) not null check (char_length(receipt_hash) = 64),
    election_id varchar(60) not null,
    state varchar(20) not null check (state in (
        'received', 'under_review', 'waits_for_you', 'counted', 'counted_in_part', 'rejected', 'sent_on',
        'not_voted')),
    reasons varchar(1000) not null,
    asks varchar(300) not null,
    source varchar(20),
    voting_location varchar(200) default '' not null,
    cast_on date,
    sealed boolean default false not null,
    registration_found boolean default false not null,
    changed_at timestamp with time zone not null,
    primary key (key_hash, envelope_hash)
);
insert into status_line_of_envelope (key_hash, envelope_hash, receipt_hash, election_id, state, reasons, asks, source,
        voting_location, cast_on, sealed, registration_found, changed_at)
    select key_hash, receipt_hash, receipt_hash, election_id, state, reasons, asks, source, voting_location, cast_on,
        sealed, registration_found, changed_at
    from status_line;
drop table status_line;
alter table status_line_of_envelope rename to status_line;
create index status_line_by_election on status_line (election_id);
create index status_line_by_receipt on status_line (receipt_hash);
create index status_line_by_envelope on status_line (envelope_hash);
