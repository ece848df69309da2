-- Envelopes that left a batch before it was opened, and who took them out; they may stand in a later batch.
create table batch_removal (
    election_id varchar(60) not null,
    batch_no integer not null,
    envelope_no varchar(60) not null,
    taken_out_by varchar(60) not null references office_user,
    taken_out_at timestamp with time zone not null,
    because varchar(4000) not null,
    primary key (election_id, batch_no, envelope_no),
    foreign key (election_id, batch_no) references release_batch,
    foreign key (election_id, envelope_no) references envelope_case
);

-- A batch is dissolved by two before it is opened: one asks, with a reason, and another does it.
alter table release_batch add column dissolve_asked_by varchar(60) references office_user;
alter table release_batch add column dissolve_because varchar(4000) default '' not null;
alter table release_batch add column dissolved_by varchar(60) references office_user;
alter table release_batch add column dissolved_at timestamp with time zone;
alter table release_batch add check (dissolve_asked_by <> dissolved_by);
alter table release_batch add check (dissolved_at is null or opened_at is null);
