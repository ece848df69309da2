-- What lists of cases are narrowed and sorted by, kept with the case as its place in the queue is, so that a page of a
-- list is read from one table however many cases there are. They follow the envelope whenever its case is assessed.
alter table envelope_case add column queue_reasons varchar(500) default '' not null;
alter table envelope_case add column queue_location varchar(200) default '' not null;
alter table envelope_case add column queue_precinct varchar(60) default '' not null;
alter table envelope_case add column queue_language varchar(40) default '' not null;

update envelope_case set
    queue_reasons = (select e.issue_reasons from envelope e
        where e.election_id = envelope_case.election_id and e.envelope_no = envelope_case.envelope_no),
    queue_location = (select e.voting_location from envelope e
        where e.election_id = envelope_case.election_id and e.envelope_no = envelope_case.envelope_no),
    queue_precinct = (select e.precinct_cast from envelope e
        where e.election_id = envelope_case.election_id and e.envelope_no = envelope_case.envelope_no),
    queue_language = coalesce((select a.language from affirmation a
        where a.election_id = envelope_case.election_id and a.envelope_no = envelope_case.envelope_no), '');

-- The index of the queue begins with the same columns.
drop index envelope_case_by_state;
