-- The state's list is looked up for each envelope by what its lines share with a voter.
create index voted_elsewhere_by_birth_date on voted_elsewhere (election_id, snapshot_no, birth_date);
create index voted_elsewhere_by_license on voted_elsewhere (election_id, snapshot_no, drivers_license);
