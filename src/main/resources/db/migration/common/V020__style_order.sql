-- The contests of a style stand in the order of the ballot.
alter table style_contest add column place integer default 0 not null;
