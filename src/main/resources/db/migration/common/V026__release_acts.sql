-- Where the law opens provisional envelopes last: that mail and in-person ballots are done.
create table others_done (
    election_id varchar(60) primary key references election,
    recorded_by varchar(60) not null references office_user,
    recorded_at timestamp with time zone not null
);

-- Why a batch of one envelope was made although the ballot can then be told.
alter table release_batch add column alone_because varchar(4000) default '' not null;
