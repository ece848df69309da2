create table notice (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    notice_no integer not null,
    kind varchar(10) not null check (kind in ('ask', 'outcome')),
    ask varchar(25) check (ask in (
        'identification', 'signature', 'signature_difference', 'affirmation', 'registration', 'eligibility')),
    channel varchar(10) check (channel in ('mail', 'email', 'phone', 'in_person')),
    language varchar(40) not null,
    due_at timestamp,
    sent_at timestamp,
    came_back_at timestamp,
    letter_sha256 varchar(64),
    logged_by varchar(60) references office_user,
    logged_at timestamp with time zone,
    version integer not null,
    primary key (election_id, envelope_no, notice_no),
    foreign key (election_id, envelope_no) references envelope_case,
    check ((kind = 'ask') = (ask is not null)),
    check (sent_at is null or channel is not null)
);

create index notice_by_due on notice (election_id, due_at);
