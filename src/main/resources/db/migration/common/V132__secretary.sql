-- A secretary keeps the record of a session and has no vote: a role of its own.
create table user_role_held (
    user_name varchar(60) not null references office_user,
    role varchar(20) not null check (role in (
        'intake', 'reviewer', 'decider', 'secretary', 'release_team', 'supervisor', 'administrator', 'observer')),
    primary key (user_name, role)
);

insert into user_role_held (user_name, role) select user_name, role from user_role;
drop table user_role;
alter table user_role_held rename to user_role;

-- Who keeps the record of a session without sitting in it, from when on.
create table record_keeper (
    election_id varchar(60) not null,
    session_no integer not null,
    user_name varchar(60) not null references office_user,
    began_at timestamp with time zone not null,
    primary key (election_id, session_no, user_name),
    foreign key (election_id, session_no) references board_session
);

-- Who recorded a motion or a second that a member said aloud; null where the member did.
alter table motion add column recorded_by varchar(60);
alter table motion add constraint motion_recorded_by foreign key (recorded_by) references office_user;
alter table motion add column second_recorded_by varchar(60);
alter table motion add constraint motion_second_recorded_by foreign key (second_recorded_by) references office_user;
