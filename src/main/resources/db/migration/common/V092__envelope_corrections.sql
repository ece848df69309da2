-- What a person corrected of an envelope after it was received or keyed: the boxes that changed as they read before and
-- after, by the names of their columns in envelopes.csv.
create table envelope_correction (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    correction_no integer not null,
    was varchar not null,
    became varchar not null,
    because varchar(1000) not null,
    corrected_by varchar(60) not null references office_user,
    corrected_at timestamp with time zone not null,
    primary key (election_id, envelope_no, correction_no),
    foreign key (election_id, envelope_no) references envelope
);
