-- Envelopes opened together. Which ballot came from which envelope is recorded nowhere.
create table release_batch (
    election_id varchar(60) not null references election,
    batch_no integer not null,
    held_apart boolean not null,
    envelopes integer not null,
    first_opener varchar(60) references office_user,
    second_opener varchar(60) references office_user,
    made_at timestamp with time zone not null,
    opened_at timestamp with time zone,
    empty_envelopes integer,
    handed_off_at timestamp with time zone,
    version integer not null,
    primary key (election_id, batch_no),
    check (first_opener <> second_opener)
);

create table batch_envelope (
    election_id varchar(60) not null,
    batch_no integer not null,
    envelope_no varchar(60) not null,
    primary key (election_id, envelope_no),
    foreign key (election_id, batch_no) references release_batch,
    foreign key (election_id, envelope_no) references envelope_case
);

-- One sheet a pair of styles, never one an envelope: the contests to copy from a ballot of the style cast.
create table remake_sheet (
    election_id varchar(60) not null,
    batch_no integer not null,
    sheet_no integer not null,
    style_cast varchar(60) not null,
    style_right varchar(60) not null,
    contests varchar(4000) not null,
    ballots integer not null check (ballots > 0),
    first_copier varchar(60) references office_user,
    second_copier varchar(60) references office_user,
    remade_at timestamp with time zone,
    version integer not null,
    primary key (election_id, batch_no, sheet_no),
    foreign key (election_id, batch_no) references release_batch,
    check (first_copier <> second_copier)
);
