-- When the deciding body meets next, as it is called: some deadlines run until then.
create table board_meeting (
    election_id varchar(60) primary key references election,
    meets_at timestamp not null
);

-- An official sits down to decide without a meeting that anybody could be told of beforehand.
alter table board_session add column called_ahead boolean default true not null;
update board_session set called_ahead = false where body = 'official';

insert into board_meeting (election_id, meets_at)
    select election_id, min(called_for) from board_session
    where body = 'board' and closed_at is null group by election_id;
insert into board_meeting (election_id, meets_at)
    select election_id, max(called_for) from board_session
    where body = 'board' and election_id not in (select election_id from board_meeting) group by election_id;

-- A deadline that was moved passes again at its new moment.
create table deadline_passed_again (
    election_id varchar(60) not null references election,
    rule varchar(100) not null,
    passed_at timestamp not null,
    recorded_at timestamp with time zone not null,
    primary key (election_id, rule, passed_at)
);
insert into deadline_passed_again select election_id, rule, passed_at, recorded_at from deadline_passed;
drop table deadline_passed;
alter table deadline_passed_again rename to deadline_passed;
