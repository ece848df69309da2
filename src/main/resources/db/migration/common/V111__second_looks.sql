-- Who was shown that one reviewer found a signature different, before looking at it: that person's look is no independent one.
create table signature_finding_seen (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    seen_no integer not null,
    answer_no integer not null,
    seen_by varchar(60) not null references office_user,
    seen_at timestamp with time zone not null,
    primary key (election_id, envelope_no, seen_no),
    unique (election_id, envelope_no, answer_no, seen_by),
    foreign key (election_id, envelope_no, answer_no) references answer_given
);

-- A case that waits for a second look at its signature waits in its turn, so that nothing tells it apart.
update envelope_case set queue_rank = 5 where queue_rank = 7;
