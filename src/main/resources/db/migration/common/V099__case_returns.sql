-- Why a case came back to the reviewers, in the words of whoever sent it back (null: the program, by a newer record or
-- because nobody worked on it for as long as the office allows). And of whom a research request asks.
create table case_return (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    return_no integer not null,
    kind varchar(20) not null,
    because varchar(4000) not null,
    returned_by varchar(60) references office_user,
    returned_at timestamp with time zone not null,
    primary key (election_id, envelope_no, return_no),
    foreign key (election_id, envelope_no) references envelope_case
);

alter table research_request add column addressee varchar(200) default '' not null;
