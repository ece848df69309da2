-- What was proposed of an envelope when it came on the agenda: it makes the consent groups.
alter table agenda_item add column proposed_outcome varchar(15);
alter table agenda_item add column primary_reason varchar(60);
alter table agenda_item add constraint agenda_item_outcome
    check (proposed_outcome in ('count', 'count_in_part', 'reject'));

-- The contests that would count where a part does otherwise than recommended, by their ids; when it was put to the vote, what the vote came to in words, and the other body's motion that it was read with.
alter table motion add column contests varchar(4000) not null;
alter table motion add column put_at timestamp with time zone;
alter table motion add column words varchar(4000);
alter table motion add column joined_session integer;
alter table motion add column joined_motion integer;
alter table motion add constraint motion_joined
    foreign key (election_id, joined_session, joined_motion) references motion;

-- The version of the case that the motion was made on, and whether a member pulled it out before the vote closed.
alter table motion_envelope add column case_version integer not null;
alter table motion_envelope add column pulled_out boolean not null;

-- Who noted a member's vote, where the member did not.
alter table vote add column noted_by varchar(60) not null;
alter table vote add constraint vote_noted_by foreign key (noted_by) references office_user;

create index session_member_by_user on session_member (election_id, user_name);
create index agenda_item_by_envelope on agenda_item (election_id, envelope_no);
