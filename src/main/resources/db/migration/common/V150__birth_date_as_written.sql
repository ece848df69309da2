-- What a voter wrote as date of birth where it is not a date, such as 13/40/1980 or 1980. Then there is no birth_date.
alter table affirmation add column birth_date_as_written varchar(40) default '' not null;
alter table affirmation add constraint birth_date_or_as_written
    check (birth_date is null or birth_date_as_written = '');
