-- What somebody wrote down about a case for everybody who has it before them. It is never changed: a newer note may say
-- which one it corrects, once.
create table case_note (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    note_no integer not null,
    words varchar(4000) not null check (char_length(words) > 0),
    corrects integer,
    written_by varchar(60) not null references office_user,
    written_at timestamp with time zone not null,
    primary key (election_id, envelope_no, note_no),
    unique (election_id, envelope_no, corrects),
    foreign key (election_id, envelope_no) references envelope_case,
    foreign key (election_id, envelope_no, corrects) references case_note (election_id, envelope_no, note_no),
    check (corrects < note_no)
);
