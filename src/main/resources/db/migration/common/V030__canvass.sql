-- A number that only a person can tell: from a paper log, the tabulator, or the voter-credit list. The newest holds.
create table noted_figure (
    election_id varchar(60) not null references election,
    note_no integer not null,
    place varchar(200) not null,
    hours varchar(10) not null check (hours in ('regular', 'extended')),
    figure varchar(30) not null,
    number integer not null check (number >= 0),
    because varchar(4000) not null,
    noted_by varchar(60) not null references office_user,
    noted_at timestamp with time zone not null,
    primary key (election_id, note_no)
);

-- The figures as they were on a day, so that none becomes less unseen.
create table kept_figures (
    election_id varchar(60) not null references election,
    kept_no integer not null,
    received integer not null,
    counted integer not null,
    counted_in_part integer not null,
    rejected integer not null,
    kept_at timestamp with time zone not null,
    primary key (election_id, kept_no)
);

-- An envelope in which the rules found something that the voter could still bring.
create table cure_defect (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    primary key (election_id, envelope_no),
    foreign key (election_id, envelope_no) references envelope
);
