-- Who recorded a court's order, and who last recorded how it stands. Whoever recorded it does not apply it to a case; orders
-- that came with the election's files have nobody.
alter table court_order add column recorded_by varchar(60) references office_user;
alter table court_order add column standing_by varchar(60) references office_user;
