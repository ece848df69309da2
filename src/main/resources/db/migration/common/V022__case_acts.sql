-- That the voter was told of an ask: the case rests on when it was sent, and rejects by an ask that ran out only then.
create table ask_told (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    told_no integer not null,
    ask varchar(25) not null check (ask in (
        'identification', 'signature', 'signature_difference', 'affirmation', 'registration', 'eligibility')),
    sent_at timestamp not null,
    recorded_at timestamp with time zone not null,
    primary key (election_id, envelope_no, told_no),
    foreign key (election_id, envelope_no) references envelope_case
);

-- Which of one person's envelopes a reviewer put forward as the one to count, the newest last.
create table group_choice (
    election_id varchar(60) not null,
    person_id varchar(60) not null,
    choice_no integer not null,
    envelope_no varchar(60) not null,
    reason varchar(4000) not null check (char_length(reason) > 0),
    chosen_by varchar(60) not null references office_user,
    chosen_at timestamp with time zone not null,
    primary key (election_id, person_id, choice_no),
    foreign key (election_id, person_id) references person,
    foreign key (election_id, envelope_no) references envelope_case
);

-- A deadline that passed is an act, recorded once, whichever node saw it first.
create table deadline_passed (
    election_id varchar(60) not null references election,
    rule varchar(100) not null,
    passed_at timestamp not null,
    recorded_at timestamp with time zone not null,
    primary key (election_id, rule)
);
