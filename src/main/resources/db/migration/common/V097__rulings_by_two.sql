-- A county ruling is recorded by one supervisor and put in force by another. Rulings from before this are in force.
alter table ruling_act add column in_force_by varchar(60) references office_user;
alter table ruling_act add column in_force_at timestamp with time zone;
alter table ruling_act add column taken_back_by varchar(60) references office_user;
alter table ruling_act add column taken_back_at timestamp with time zone;
update ruling_act set in_force_at = recorded_at;
