-- Who has to answer a request: in which pile of the queue its case waits. Older requests went to other offices.
alter table research_request add column waits_for varchar(20) default 'another_office' not null
    check (waits_for in ('voter', 'colleague', 'another_office'));
