create table board_session (
    election_id varchar(60) not null references election,
    session_no integer not null,
    body varchar(10) not null check (body in ('official', 'board', 'first', 'second')),
    called_for timestamp not null,
    place varchar(300) not null,
    quorum integer not null,
    opened_at timestamp with time zone,
    closed_at timestamp with time zone,
    version integer not null,
    primary key (election_id, session_no)
);

create table session_member (
    election_id varchar(60) not null,
    session_no integer not null,
    user_name varchar(60) not null references office_user,
    arrived_at timestamp with time zone not null,
    left_at timestamp with time zone,
    primary key (election_id, session_no, user_name, arrived_at),
    foreign key (election_id, session_no) references board_session
);

create table recusal (
    election_id varchar(60) not null,
    session_no integer not null,
    envelope_no varchar(60) not null,
    user_name varchar(60) not null references office_user,
    ground varchar(4000) not null,
    recorded_at timestamp with time zone not null,
    primary key (election_id, session_no, envelope_no, user_name),
    foreign key (election_id, session_no) references board_session,
    foreign key (election_id, envelope_no) references envelope_case
);

-- The envelopes of a session in their order; those of one consent group are put together unless pulled out.
create table agenda_item (
    election_id varchar(60) not null,
    session_no integer not null,
    envelope_no varchar(60) not null,
    place integer not null,
    consent_group integer,
    pulled_out_by varchar(60) references office_user,
    version integer not null,
    primary key (election_id, session_no, envelope_no),
    foreign key (election_id, session_no) references board_session,
    foreign key (election_id, envelope_no) references envelope_case
);

create table motion (
    election_id varchar(60) not null,
    session_no integer not null,
    motion_no integer not null,
    outcome varchar(15) not null check (outcome in ('count', 'count_in_part', 'reject', 'table', 'reopen')),
    reasons varchar(1000) not null,
    legal_reference varchar(1000) not null,
    departs_because varchar(4000),
    moved_by varchar(60) not null references office_user,
    seconded_by varchar(60) references office_user,
    moved_at timestamp with time zone not null,
    result varchar(10) check (result in ('carried', 'failed', 'tied', 'withdrawn')),
    result_at timestamp with time zone,
    version integer not null,
    primary key (election_id, session_no, motion_no),
    foreign key (election_id, session_no) references board_session,
    check ((result is null) = (result_at is null))
);

create table motion_envelope (
    election_id varchar(60) not null,
    session_no integer not null,
    motion_no integer not null,
    envelope_no varchar(60) not null,
    primary key (election_id, session_no, motion_no, envelope_no),
    foreign key (election_id, session_no, motion_no) references motion,
    foreign key (election_id, session_no, envelope_no) references agenda_item
);

create table vote (
    election_id varchar(60) not null,
    session_no integer not null,
    motion_no integer not null,
    user_name varchar(60) not null references office_user,
    vote varchar(10) not null check (vote in ('yes', 'no', 'abstains', 'recused')),
    cast_at timestamp with time zone not null,
    primary key (election_id, session_no, motion_no, user_name),
    foreign key (election_id, session_no, motion_no) references motion
);

-- A decision takes effect when it is recorded; a later one, or a reopening, sets it aside and leaves it readable.
create table decision (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    decision_no integer not null,
    outcome varchar(15) not null check (outcome in ('count', 'count_in_part', 'reject')),
    reasons varchar(1000) not null,
    legal_reference varchar(1000) not null,
    departs_because varchar(4000),
    contests varchar(4000) not null,
    assessment_no integer not null,
    decider varchar(10) not null check (decider in ('official', 'board', 'two_bodies', 'court')),
    session_no integer,
    motion_no integer,
    decided_at timestamp with time zone not null,
    set_aside_at timestamp with time zone,
    set_aside_because varchar(4000),
    primary key (election_id, envelope_no, decision_no),
    foreign key (election_id, envelope_no) references envelope_case,
    foreign key (election_id, session_no, motion_no) references motion,
    check (outcome <> 'reject' or (char_length(reasons) > 0 and char_length(legal_reference) > 0)),
    check ((set_aside_at is null) = (set_aside_because is null))
);
