-- A notice, or mail that came back, logged by mistake. What rests on it is as if it had not been logged.
alter table notice_attempt add column taken_back_at timestamp with time zone;
alter table notice_attempt add column taken_back_by varchar(60);
alter table notice_attempt add foreign key (taken_back_by) references office_user;
alter table notice_attempt add column taken_back_because varchar(1000);
create table returned_mail_taken_back (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    notice_no integer not null,
    attempt_no integer not null,
    taken_no integer not null,
    came_back_at timestamp not null,
    because varchar(1000) not null,
    taken_back_by varchar(60) not null references office_user,
    taken_back_at timestamp with time zone not null,
    primary key (election_id, envelope_no, notice_no, attempt_no, taken_no),
    foreign key (election_id, envelope_no, notice_no, attempt_no) references notice_attempt
);
alter table ask_told add column taken_back_at timestamp with time zone;

-- The word that mail and in-person ballots are done, given too early and taken back.
create table others_done_taken_back (
    election_id varchar(60) not null references election,
    taken_no integer not null,
    recorded_by varchar(60) not null references office_user,
    recorded_at timestamp with time zone not null,
    because varchar(1000) not null,
    taken_back_by varchar(60) not null references office_user,
    taken_back_at timestamp with time zone not null,
    primary key (election_id, taken_no)
);

-- A search that found nobody, recorded by mistake.
alter table voter_search add column taken_back_at timestamp with time zone;
alter table voter_search add column taken_back_because varchar(1000);
