-- Rule packs that the office put in force for an election in the place of the one before, each as it was uploaded.
create table rule_change (
    election_id varchar(60) not null references election,
    change_no integer not null,
    pack_name varchar(60) not null,
    pack_id varchar(60) not null,
    content varchar not null,
    pack_hash varchar(64) not null,
    hash_before varchar(64) not null,
    accepted_because varchar(12) not null check (accepted_because in ('bundled', 'proved', 'overridden')),
    counterexample varchar(8000) not null,
    counsel varchar(200) not null,
    ground varchar(4000) not null,
    put_by varchar(60) not null,
    put_at timestamp with time zone not null,
    primary key (election_id, change_no)
);
