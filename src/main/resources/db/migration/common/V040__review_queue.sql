-- The order in which cases are taken: how urgent, and the moment that counts within that. Kept with the case, so that
-- the next one is the first entry of an index however many cases there are.
alter table envelope_case add column queue_rank smallint default 5 not null;
alter table envelope_case add column queue_at timestamp default timestamp '9999-12-31 00:00:00' not null;
alter table envelope_case add column outlook varchar(20) default 'research' not null;
create index envelope_case_queue on envelope_case (election_id, state, queue_rank, queue_at, envelope_no);

-- What was done to one envelope, without reading the whole chain.
create index ledger_by_subject on ledger (chain, subject, sequence);
