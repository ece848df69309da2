-- The lists for the mail-ballot desk: whose mail ballot is to be refused because the provisional ballot counts, and of whom
-- that is withdrawn. A line is kept as it was sent.
create table mail_desk_line (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    list_no integer not null,
    line_no integer not null,
    kind varchar(20) not null check (kind in ('refuse', 'withdrawn')),
    decision_no integer not null,
    voter_id varchar(60) not null,
    voter_name varchar(400) not null,
    receipt_no varchar(60) not null,
    ballots varchar(4000) not null,
    sent_by varchar(60) not null references office_user,
    sent_at timestamp with time zone not null,
    primary key (election_id, list_no, line_no),
    foreign key (election_id, envelope_no) references envelope_case
);
create index mail_desk_line_of_envelope on mail_desk_line (election_id, envelope_no);

-- What the mail-ballot desk answered to a line; of several answers the newest holds, which has a reason.
create table mail_desk_answer (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    answer_no integer not null,
    list_no integer not null,
    line_no integer not null,
    answer varchar(20) not null check (answer in ('refused', 'counted', 'not_seen', 'taken_off')),
    answered_on date not null,
    answered_by varchar(200) not null,
    because varchar(4000) not null,
    recorded_by varchar(60) not null references office_user,
    recorded_at timestamp with time zone not null,
    primary key (election_id, envelope_no, answer_no),
    foreign key (election_id, list_no, line_no) references mail_desk_line
);
