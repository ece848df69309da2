-- What a reviewer proposes without a decision on the vote: the envelope is sent on to the voter's home county, or its case
-- is closed because there is no vote to decide. Another person confirms it or returns it; the row has both, so that the
-- database can refuse one person as both. Cases that ended before it took two have no row.
create table end_proposal (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    proposal_no integer not null,
    ends_as varchar(20) not null check (ends_as in ('sent_on', 'administrative_end')),
    to_county varchar(200) not null,
    reasons varchar(1000) not null,
    legal_reference varchar(1000) not null,
    assessment_no integer not null,
    proposed_by varchar(60) not null references office_user,
    proposed_at timestamp with time zone not null,
    state varchar(10) not null check (state in ('standing', 'agreed', 'returned', 'withdrawn')),
    read_by varchar(60) references office_user,
    read_at timestamp with time zone,
    note varchar(4000) not null,
    primary key (election_id, envelope_no, proposal_no),
    foreign key (election_id, envelope_no) references envelope_case,
    check (read_by <> proposed_by),
    check (state <> 'agreed' or read_by is not null),
    check (ends_as <> 'sent_on' or char_length(to_county) > 0)
);
