-- A list as loaded on a day. The rows of a snapshot never change; a newer file makes a newer snapshot.
create table snapshot (
    election_id varchar(60) not null references election,
    snapshot_no integer not null,
    kind varchar(15) not null check (kind in ('roll', 'mail_ballots', 'check_ins', 'voted_elsewhere')),
    content_hash varchar(64) not null,
    row_count integer not null,
    loaded_at timestamp with time zone not null,
    primary key (election_id, snapshot_no),
    unique (election_id, kind, snapshot_no)
);

-- Which snapshot of each kind is in use: switched in one statement.
create table current_snapshot (
    election_id varchar(60) not null,
    kind varchar(15) not null,
    snapshot_no integer not null,
    version integer not null,
    primary key (election_id, kind),
    foreign key (election_id, kind, snapshot_no) references snapshot (election_id, kind, snapshot_no)
);

create table voter (
    election_id varchar(60) not null,
    snapshot_no integer not null,
    voter_id varchar(60) not null,
    row_no integer not null,
    last_name varchar(120) not null,
    first_name varchar(120) not null,
    middle_name varchar(120) not null,
    suffix varchar(20) not null,
    birth_date date,
    house_number varchar(20) not null,
    street varchar(200) not null,
    unit varchar(60) not null,
    city varchar(100) not null,
    zip varchar(20) not null,
    precinct varchar(60) not null,
    split varchar(60) not null,
    registered_on date,
    registration_channel varchar(15) check (registration_channel in (
        'in_person', 'online', 'mail', 'motor_vehicle', 'agency', 'drive', 'same_day')),
    received_on date,
    status varchar(10) not null check (status in ('active', 'inactive', 'pending', 'cancelled')),
    status_reason varchar(300) not null,
    status_on date,
    confirmation_sent_on date,
    entitlement varchar(12) not null check (entitlement in ('full', 'federal_only')),
    id_last4 varchar(10) not null,
    drivers_license varchar(40) not null,
    party varchar(40) not null,
    party_since date,
    id_required varchar(7) not null check (id_required in ('yes', 'no', 'unknown')),
    number_matched varchar(7) not null check (number_matched in ('yes', 'no', 'unknown')),
    last_voted_on date,
    former_name varchar(300) not null,
    confidential boolean not null,
    mail_address varchar(500) not null,
    language varchar(40) not null,
    primary key (election_id, snapshot_no, voter_id),
    foreign key (election_id, snapshot_no) references snapshot
);

create index voter_by_name on voter (election_id, snapshot_no, last_name, first_name);
create index voter_by_birth_date on voter (election_id, snapshot_no, birth_date);

create table mail_ballot (
    election_id varchar(60) not null,
    snapshot_no integer not null,
    row_no integer not null,
    voter_id varchar(60) not null,
    serial varchar(60) not null,
    issued_on date,
    state varchar(15) not null check (state in (
        'outstanding', 'returned', 'accepted', 'rejected', 'surrendered', 'late', 'void', 'cure_pending',
        'undeliverable')),
    state_on date,
    primary key (election_id, snapshot_no, row_no),
    foreign key (election_id, snapshot_no) references snapshot
);

create index mail_ballot_by_voter on mail_ballot (election_id, snapshot_no, voter_id);

create table check_in (
    election_id varchar(60) not null,
    snapshot_no integer not null,
    row_no integer not null,
    voter_id varchar(60) not null,
    voting_location varchar(200) not null,
    checked_in_at timestamp not null,
    kind varchar(12) not null check (kind in ('regular', 'provisional')),
    ballot_issued varchar(7) not null check (ballot_issued in ('yes', 'no', 'unknown')),
    cancelled_at timestamp,
    primary key (election_id, snapshot_no, row_no),
    foreign key (election_id, snapshot_no) references snapshot
);

create index check_in_by_voter on check_in (election_id, snapshot_no, voter_id);

create table voted_elsewhere (
    election_id varchar(60) not null,
    snapshot_no integer not null,
    row_no integer not null,
    last_name varchar(120) not null,
    first_name varchar(120) not null,
    middle_name varchar(120) not null,
    suffix varchar(20) not null,
    birth_date date,
    id_last4 varchar(10) not null,
    drivers_license varchar(40) not null,
    county varchar(100) not null,
    how varchar(60) not null,
    voted_on date,
    primary key (election_id, snapshot_no, row_no),
    foreign key (election_id, snapshot_no) references snapshot
);
