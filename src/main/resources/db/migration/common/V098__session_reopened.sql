-- A session that was closed by mistake and reopened: when it had been closed, by whom it was reopened and why.
create table session_reopening (
    election_id varchar(60) not null,
    session_no integer not null,
    reopening_no integer not null,
    closed_at timestamp with time zone not null,
    because varchar(4000) not null,
    reopened_by varchar(60) not null references office_user,
    reopened_at timestamp with time zone not null,
    primary key (election_id, session_no, reopening_no),
    foreign key (election_id, session_no) references board_session
);
