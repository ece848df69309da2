-- Cure evidence recorded by mistake, such as on the wrong envelope: it stays readable and counts no more.
create table cure_taken_back (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    cure_no integer not null,
    because varchar(1000) not null,
    taken_back_by varchar(60) not null references office_user,
    taken_back_at timestamp with time zone not null,
    primary key (election_id, envelope_no, cure_no),
    foreign key (election_id, envelope_no, cure_no) references cure_evidence
);
