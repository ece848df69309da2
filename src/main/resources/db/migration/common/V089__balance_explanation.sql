-- Why a total cannot agree: written by one supervisor for the difference it had then (null: it cannot be checked), signed
-- by another. Taken back it explains nothing and stays.
create table balance_explanation (
    election_id varchar(60) not null references election,
    explanation_no integer not null,
    place varchar(200) not null,
    hours varchar(20) not null,
    identity varchar(40) not null,
    difference integer,
    because varchar(4000) not null,
    written_by varchar(60) not null references office_user,
    written_at timestamp with time zone not null,
    signed_by varchar(60) references office_user,
    signed_at timestamp with time zone,
    taken_back_by varchar(60) references office_user,
    taken_back_at timestamp with time zone,
    version integer not null,
    primary key (election_id, explanation_no),
    check (signed_by <> written_by)
);
