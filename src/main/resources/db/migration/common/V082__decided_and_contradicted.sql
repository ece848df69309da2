-- What a newer record changed about a case that was settled already, in the words a person reads.
create table late_change (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    change_no integer not null,
    because varchar(4000) not null,
    found_at timestamp with time zone not null,
    primary key (election_id, envelope_no, change_no),
    foreign key (election_id, envelope_no) references envelope_case
);

-- What was done about a settled case of which the rules say something else now: the decider let the decision stand, or,
-- where nothing can be undone any more, somebody wrote down what followed. It holds for what the rules said then.
create table follow_up (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    follow_up_no integer not null,
    decision_no integer,
    assessment_no integer not null,
    says varchar(40) not null,
    reasons varchar(4000) not null,
    note varchar(4000) not null,
    session_no integer,
    motion_no integer,
    recorded_by varchar(60) not null references office_user,
    recorded_at timestamp with time zone not null,
    primary key (election_id, envelope_no, follow_up_no),
    foreign key (election_id, envelope_no) references envelope_case
);

-- A motion can also let a decision stand that a newer record contradicts.
alter table motion add column kind varchar(15);
update motion set kind = outcome;
alter table motion drop column outcome;
alter table motion rename column kind to outcome;
alter table motion alter column outcome set not null;
alter table motion add check (outcome in ('count', 'count_in_part', 'reject', 'table', 'reopen', 'let_stand'));
