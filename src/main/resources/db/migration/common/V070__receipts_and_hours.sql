-- Whether receipt numbers have a check digit, and when the office is open: a line for each language, such as
-- "en=Monday to Friday, 8 am to 5 pm". Elections that were loaded before say neither.
alter table election add column receipts varchar(20) default 'own' not null;
alter table election add constraint election_receipts check (receipts in ('own', 'check_digit'));
alter table election add column office_hours varchar(2000) default '' not null;
