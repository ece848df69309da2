-- How many boxes a second keying, handed in but not yet settled, has otherwise than the first.
alter table affirmation_draft add column differing integer default 0 not null;
