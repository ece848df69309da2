-- Who an envelope's voter is: a record of the roll, or a person of their own where there is none.
create table person (
    election_id varchar(60) not null references election,
    person_id varchar(60) not null,
    voter_id varchar(60),
    because varchar(30) not null check (because in ('on_the_roll', 'same_day', 'affidavit', 'not_on_the_roll')),
    created_at timestamp with time zone not null,
    primary key (election_id, person_id),
    unique (election_id, voter_id)
);

-- One row an envelope: where its case stands. counted_person is set while a decision to count stands, so that one
-- person's second envelope cannot count.
create table envelope_case (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    state varchar(15) not null check (state in (
        'received', 'open', 'in_review', 'proposed', 'ready', 'decided', 'sent_on', 'ended', 'released')),
    person_id varchar(60),
    counted_person varchar(60),
    taken_by varchar(60) references office_user,
    taken_at timestamp with time zone,
    changed_at timestamp with time zone not null,
    version integer not null,
    primary key (election_id, envelope_no),
    unique (election_id, counted_person),
    foreign key (election_id, envelope_no) references envelope,
    foreign key (election_id, person_id) references person,
    foreign key (election_id, counted_person) references person (election_id, person_id),
    check (counted_person is null or counted_person = person_id),
    check ((taken_by is null) = (taken_at is null))
);

create index envelope_case_by_state on envelope_case (election_id, state);
create index envelope_case_by_person on envelope_case (election_id, person_id);

-- A pairing with the roll, the newest last: what the match presumes, or what a person settled.
create table link (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    link_no integer not null,
    identity varchar(15) not null check (identity in (
        'confirmed', 'presumed', 'one_fits_well', 'several_fit', 'none_fits', 'not_on_roll')),
    voter_id varchar(60),
    probability double precision not null check (probability between 0 and 1),
    likeness varchar not null,
    candidates varchar not null,
    snapshot_no integer not null,
    linked_by varchar(60) references office_user,
    linked_at timestamp with time zone not null,
    ground varchar(4000) not null,
    primary key (election_id, envelope_no, link_no),
    foreign key (election_id, envelope_no) references envelope_case,
    foreign key (election_id, snapshot_no) references snapshot,
    check (identity not in ('confirmed', 'not_on_roll') or linked_by is not null),
    check (identity <> 'confirmed' or voter_id is not null)
);

create index link_by_voter on link (election_id, voter_id);

-- What the rules said, from what: with these four the same bytes come out again.
create table assessment (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    assessment_no integer not null,
    way varchar(10) not null check (way in ('settled', 'presumed', 'outlook')),
    facts varchar not null,
    as_of timestamp not null,
    pack_hash varchar(64) not null,
    engine_version integer not null,
    recommendation varchar(20) not null check (recommendation in (
        'count', 'count_in_part', 'reject', 'research', 'wait_for_the_voter', 'sent_on', 'administrative_end')),
    reasons varchar(1000) not null,
    held_apart boolean not null,
    content varchar not null,
    assessed_at timestamp with time zone not null,
    primary key (election_id, envelope_no, assessment_no, way),
    foreign key (election_id, envelope_no) references envelope_case,
    foreign key (election_id, pack_hash) references resolved_pack
);

-- What a person recorded of one fact: a poll book seen, a signature compared, a question answered otherwise.
create table answer_given (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    answer_no integer not null,
    kind varchar(20) not null check (kind in (
        'otherwise', 'poll_book_seen', 'first_signature_look', 'second_signature_look', 'other')),
    question varchar(60) not null,
    fact varchar(60) not null,
    fact_words varchar(300) not null,
    reason varchar(4000) not null,
    received_at timestamp,
    given_by varchar(60) not null references office_user,
    given_at timestamp with time zone not null,
    withdrawn_at timestamp with time zone,
    primary key (election_id, envelope_no, answer_no),
    foreign key (election_id, envelope_no) references envelope_case,
    check (kind <> 'otherwise' or char_length(reason) > 0)
);

-- A person's search for a voter whom the match did not find, by its check list.
create table voter_search (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    search_no integer not null,
    looked_in varchar(300) not null,
    found varchar(20) not null check (found in ('nothing', 'record', 'other_county', 'pending', 'cancelled')),
    note varchar(4000) not null,
    searched_by varchar(60) not null references office_user,
    searched_at timestamp with time zone not null,
    primary key (election_id, envelope_no, search_no),
    foreign key (election_id, envelope_no) references envelope_case
);

create table research_request (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    request_no integer not null,
    asked varchar(4000) not null,
    asked_by varchar(60) not null references office_user,
    asked_at timestamp with time zone not null,
    found varchar(4000),
    found_by varchar(60) references office_user,
    found_at timestamp with time zone,
    version integer not null,
    primary key (election_id, envelope_no, request_no),
    foreign key (election_id, envelope_no) references envelope_case
);

create table proposal (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    proposal_no integer not null,
    outcome varchar(15) not null check (outcome in ('count', 'count_in_part', 'reject')),
    reasons varchar(1000) not null,
    legal_reference varchar(1000) not null,
    departs_because varchar(4000),
    assessment_no integer not null,
    proposed_by varchar(60) not null references office_user,
    proposed_at timestamp with time zone not null,
    state varchar(10) not null check (state in ('standing', 'agreed', 'returned', 'withdrawn')),
    version integer not null,
    primary key (election_id, envelope_no, proposal_no),
    unique (election_id, envelope_no, proposal_no, proposed_by),
    foreign key (election_id, envelope_no) references envelope_case,
    check (outcome <> 'reject' or (char_length(reasons) > 0 and char_length(legal_reference) > 0))
);

-- The second reader is never the proposer: the row repeats who proposed, so that the database can refuse it.
create table second_review (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    proposal_no integer not null,
    proposed_by varchar(60) not null,
    reviewed_by varchar(60) not null references office_user,
    agrees boolean not null,
    note varchar(4000) not null,
    reviewed_at timestamp with time zone not null,
    primary key (election_id, envelope_no, proposal_no, reviewed_by),
    foreign key (election_id, envelope_no, proposal_no, proposed_by)
        references proposal (election_id, envelope_no, proposal_no, proposed_by),
    check (reviewed_by <> proposed_by)
);
