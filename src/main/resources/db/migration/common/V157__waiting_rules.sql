-- Which rules the office must rule on before the open questions of a case can be answered, by their keys, and the rules under
-- which that was found. They follow the case whenever it is assessed; where other rules are in force, it is found anew.
alter table envelope_case add column waiting_rules varchar(4000) default '' not null;
alter table envelope_case add column waiting_pack varchar(64) default '' not null;
