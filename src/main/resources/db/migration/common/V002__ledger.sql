-- One row a chain: its last entry. Locked last, after every case.
create table ledger_head (
    chain varchar(80) primary key,
    sequence bigint not null check (sequence >= 0),
    hash varchar(64) not null check (char_length(hash) = 64)
);

-- One row an act. Rows are added and read, never changed.
create table ledger (
    chain varchar(80) not null references ledger_head,
    sequence bigint not null check (sequence > 0),
    at varchar(40) not null,
    actor varchar(40) not null,
    act varchar(60) not null,
    subject varchar(200) not null,
    payload varchar not null,
    previous_hash varchar(64) not null,
    hash varchar(64) not null,
    primary key (chain, sequence),
    unique (chain, previous_hash),
    unique (chain, hash)
);

insert into ledger_head (chain, sequence, hash)
values ('office', 0, '0000000000000000000000000000000000000000000000000000000000000000');
