-- Until when a voter was told that an ask may be answered, on the county's clock; null where the notice gave no date.
alter table notice_attempt add column told_until timestamp;
