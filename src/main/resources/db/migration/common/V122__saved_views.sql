-- A named list of cases that one person keeps: what narrows it and its order, as they stand in its address.
create table saved_view (
    election_id varchar(60) not null references election,
    user_name varchar(60) not null references office_user,
    view_no integer not null,
    view_name varchar(60) not null,
    shown varchar(2000) not null,
    primary key (election_id, user_name, view_no),
    unique (election_id, user_name, view_name)
);
