create table transmittal (
    election_id varchar(60) not null references election,
    line_no integer not null,
    voting_location varchar(200) not null,
    returned_on date,
    bag varchar(60) not null,
    seal_out varchar(60) not null,
    seal_in varchar(60) not null,
    supplied integer,
    issued integer not null,
    spoiled integer not null,
    unused integer,
    returned integer not null,
    scanned_in_error integer,
    loose_ballots integer,
    version integer not null,
    primary key (election_id, line_no)
);

create table envelope (
    election_id varchar(60) not null references election,
    envelope_no varchar(60) not null,
    receipt_no varchar(60) not null unique,
    place integer not null,
    source varchar(15) not null check (source in ('poll', 'mail_without_id', 'other_county')),
    voting_location varchar(200) not null,
    precinct_cast varchar(60) not null,
    style_cast varchar(60) not null,
    party_ballot_cast varchar(40) not null,
    cast_at timestamp,
    extended_hours varchar(7) not null check (extended_hours in ('yes', 'no', 'unknown')),
    in_line_at_close varchar(7) not null check (in_line_at_close in ('yes', 'no', 'unknown')),
    issue_reasons varchar(500) not null,
    id_shown varchar(7) not null check (id_shown in ('yes', 'no', 'unknown')),
    id_kind varchar(60) not null,
    declaration varchar(60) not null,
    mail_ballot_surrendered varchar(7) not null check (mail_ballot_surrendered in ('yes', 'no', 'unknown')),
    sent_here_by_official varchar(7) not null check (sent_here_by_official in ('yes', 'no', 'unknown')),
    official_note varchar(4000) not null,
    voter_signed varchar(7) not null check (voter_signed in ('yes', 'no', 'mark', 'unknown')),
    mark_witness varchar(7) not null check (mark_witness in ('yes', 'no', 'unknown')),
    official_signed varchar(7) not null check (official_signed in ('yes', 'no', 'unknown')),
    condition varchar(25) not null check (condition in (
        'sealed', 'unsealed', 'torn', 'feels_empty', 'withdrawn', 'spoiled', 'regular_ballot_inside', 'unknown')),
    signature_image varchar(300) not null,
    received_at timestamp,
    recorded_at timestamp with time zone not null,
    ledger_salt varchar(64),
    version integer not null,
    primary key (election_id, envelope_no)
);

create index envelope_by_location on envelope (election_id, voting_location);

create table affirmation (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    last_name varchar(120) not null,
    first_name varchar(120) not null,
    middle_name varchar(120) not null,
    suffix varchar(20) not null,
    former_name varchar(300) not null,
    birth_date date,
    residence_line varchar(300) not null,
    residence_unit varchar(60) not null,
    residence_city varchar(100) not null,
    residence_zip varchar(20) not null,
    former_line varchar(300) not null,
    former_unit varchar(60) not null,
    former_city varchar(100) not null,
    former_zip varchar(20) not null,
    moved_on date,
    mail_address varchar(500) not null,
    id_last4 varchar(10) not null,
    drivers_license varchar(40) not null,
    phone varchar(40) not null,
    email varchar(200) not null,
    language varchar(40) not null,
    party varchar(40) not null,
    statements_ticked varchar(500) not null,
    version integer not null,
    primary key (election_id, envelope_no),
    foreign key (election_id, envelope_no) references envelope
);

create index affirmation_by_name on affirmation (election_id, last_name, first_name);

create table affirmation_field (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    field varchar(30) not null check (field in (
        'last_name', 'first_name', 'date_of_birth', 'residence_address_line', 'city', 'zip', 'id_last4',
        'statements_ticked')),
    state varchar(15) not null check (state in ('keyed', 'left_blank', 'illegible', 'refused', 'not_yet_keyed')),
    primary key (election_id, envelope_no, field),
    foreign key (election_id, envelope_no) references affirmation
);

-- What one person is keying or has keyed, before it becomes the affirmation; two rows where it is keyed twice.
create table affirmation_draft (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    user_name varchar(60) not null references office_user,
    keyed varchar not null,
    finished boolean not null,
    saved_at timestamp with time zone not null,
    version integer not null,
    primary key (election_id, envelope_no, user_name),
    foreign key (election_id, envelope_no) references envelope
);

create table envelope_image (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    kind varchar(15) not null check (kind in ('envelope', 'signature')),
    media_type varchar(60) not null,
    sha256 varchar(64) not null,
    content image_bytes not null,
    loaded_at timestamp with time zone not null,
    primary key (election_id, envelope_no, kind),
    foreign key (election_id, envelope_no) references envelope
);

-- A signature on file with a registration, to compare with.
create table voter_image (
    election_id varchar(60) not null references election,
    voter_id varchar(60) not null,
    image_no integer not null,
    media_type varchar(60) not null,
    sha256 varchar(64) not null,
    content image_bytes not null,
    loaded_at timestamp with time zone not null,
    primary key (election_id, voter_id, image_no)
);

create table cure_evidence (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    cure_no integer not null,
    ask varchar(25) not null check (ask in (
        'identification', 'signature', 'signature_difference', 'affirmation', 'registration', 'eligibility')),
    received_at timestamp not null,
    recorded_at timestamp with time zone not null,
    recorded_by varchar(60) not null references office_user,
    words varchar(2000) not null,
    primary key (election_id, envelope_no, cure_no),
    foreign key (election_id, envelope_no) references envelope
);
