create table office_user (
    user_name varchar(60) primary key,
    full_name varchar(120) not null,
    party varchar(40) not null,
    pseudonym varchar(40) not null unique,
    password_hash varchar(100) not null,
    password_is_one_time boolean not null,
    enabled boolean not null,
    demo boolean not null,
    created_at timestamp with time zone not null,
    version integer not null
);

create table user_role (
    user_name varchar(60) not null references office_user,
    role varchar(20) not null check (role in (
        'intake', 'reviewer', 'decider', 'release_team', 'supervisor', 'administrator', 'observer')),
    primary key (user_name, role)
);
