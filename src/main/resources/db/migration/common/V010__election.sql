create table election (
    election_id varchar(60) primary key,
    name varchar(200) not null,
    held_on date not null,
    kind varchar(10) not null check (kind in ('general', 'primary', 'special')),
    jurisdiction varchar(200) not null,
    zone varchar(60) not null,
    rule_pack varchar(60) not null,
    deciding_members integer not null,
    deciding_quorum integer not null,
    office_name varchar(200) not null,
    office_address varchar(300) not null,
    office_phone varchar(60) not null,
    office_email varchar(200) not null,
    polls_close time not null,
    languages varchar(200) not null,
    content_hash varchar(64) not null unique,
    loaded_at timestamp with time zone not null,
    closed_at timestamp with time zone,
    version integer not null
);

create table election_closed_day (
    election_id varchar(60) not null references election,
    closed_on date not null,
    primary key (election_id, closed_on)
);

create table court_order (
    election_id varchar(60) not null references election,
    order_no integer not null,
    kind varchar(10) not null check (kind in ('extend', 'open', 'count', 'reject', 'hold', 'preserve')),
    court varchar(200) not null,
    ordered_on date,
    scope varchar(2000) not null,
    standing varchar(10) not null check (standing in ('pending', 'in_force', 'set_aside', 'final')),
    until_at timestamp,
    recorded_at timestamp with time zone not null,
    version integer not null,
    primary key (election_id, order_no)
);

create table court_order_envelope (
    election_id varchar(60) not null,
    order_no integer not null,
    envelope_no varchar(60) not null,
    primary key (election_id, order_no, envelope_no),
    foreign key (election_id, order_no) references court_order
);

create index court_order_envelope_by_envelope on court_order_envelope (election_id, envelope_no);

create table county_ruling (
    election_id varchar(60) not null references election,
    rule varchar(100) not null,
    ruled_value varchar(500) not null,
    signed_by varchar(200) not null,
    signed_on date not null,
    ground varchar(4000) not null,
    primary key (election_id, rule)
);

-- A rule pack as resolved for this election: assessments name it by its hash, so it is kept as it was.
create table resolved_pack (
    election_id varchar(60) not null references election,
    pack_hash varchar(64) not null,
    pack_id varchar(60) not null,
    content varchar not null,
    accepted_because varchar(12) not null check (accepted_because in ('bundled', 'proved', 'overridden')),
    accepted_at timestamp with time zone not null,
    primary key (election_id, pack_hash)
);

create table contest (
    election_id varchar(60) not null references election,
    contest_id varchar(60) not null,
    place integer not null,
    title varchar(300) not null,
    district varchar(200) not null,
    level varchar(15) not null check (level in ('federal', 'statewide', 'state_district', 'county', 'local')),
    primary key (election_id, contest_id)
);

create table ballot_style (
    election_id varchar(60) not null references election,
    style varchar(60) not null,
    place integer not null,
    party varchar(40) not null,
    primary key (election_id, style)
);

create table style_contest (
    election_id varchar(60) not null,
    style varchar(60) not null,
    contest_id varchar(60) not null,
    primary key (election_id, style, contest_id),
    foreign key (election_id, style) references ballot_style,
    foreign key (election_id, contest_id) references contest
);

create table precinct_part (
    election_id varchar(60) not null references election,
    precinct varchar(60) not null,
    split varchar(60) not null,
    party varchar(40) not null,
    place integer not null,
    style varchar(60) not null,
    voting_location varchar(200) not null,
    primary key (election_id, precinct, split, party),
    foreign key (election_id, style) references ballot_style
);

create table street_segment (
    election_id varchar(60) not null references election,
    line_no integer not null,
    low integer not null,
    high integer not null,
    parity varchar(4) not null check (parity in ('odd', 'even', 'both')),
    street varchar(200) not null,
    city varchar(100) not null,
    zip varchar(20) not null,
    precinct varchar(60) not null,
    split varchar(60) not null,
    primary key (election_id, line_no)
);

create index street_segment_by_street on street_segment (election_id, street);
