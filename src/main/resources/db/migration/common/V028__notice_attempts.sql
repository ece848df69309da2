-- Notices as they are due, and each attempt to send one. No program wrote the table of V016 yet.
drop table notice;

-- What a voter must be told: what may still be brought (one row an ask, its due moment the first one), or how the
-- envelope was decided (one row a decision). sent_at is the earliest attempt: the one that decides.
create table notice (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    notice_no integer not null,
    kind varchar(10) not null check (kind in ('ask', 'outcome')),
    ask varchar(25) check (ask in (
        'identification', 'signature', 'signature_difference', 'affirmation', 'registration', 'eligibility')),
    reason varchar(40),
    decision_no integer,
    due_at timestamp not null,
    held_apart boolean not null,
    found_at timestamp with time zone not null,
    withdrawn_at timestamp with time zone,
    sent_at timestamp,
    version integer not null,
    primary key (election_id, envelope_no, notice_no),
    foreign key (election_id, envelope_no) references envelope_case,
    unique (election_id, envelope_no, ask),
    unique (election_id, envelope_no, decision_no),
    check ((kind = 'ask') = (ask is not null)),
    check ((kind = 'ask') = (reason is not null)),
    check ((kind = 'outcome') = (decision_no is not null)),
    check (sent_at is null or withdrawn_at is null)
);

create index notice_by_due on notice (election_id, due_at);

-- One attempt to tell the voter. Mail that came back is a status of the attempt, not a failure to notify.
create table notice_attempt (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    notice_no integer not null,
    attempt_no integer not null,
    channel varchar(10) not null check (channel in ('mail', 'email', 'phone', 'in_person')),
    sent_at timestamp not null,
    came_back_at timestamp,
    letter_sha256 varchar(64) not null check (char_length(letter_sha256) = 64),
    logged_by varchar(60) not null references office_user,
    logged_at timestamp with time zone not null,
    primary key (election_id, envelope_no, notice_no, attempt_no),
    foreign key (election_id, envelope_no, notice_no) references notice
);
