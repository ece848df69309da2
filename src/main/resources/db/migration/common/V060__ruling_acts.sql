-- Every signing of a county ruling, also one that a later signing of the same rule replaced.
create table ruling_act (
    election_id varchar(60) not null references election,
    act_no integer not null,
    rule varchar(100) not null,
    ruled_value varchar(500) not null,
    signed_by varchar(200) not null,
    signed_on date not null,
    ground varchar(4000) not null,
    recorded_by varchar(60) not null,
    recorded_at timestamp with time zone not null,
    primary key (election_id, act_no)
);
