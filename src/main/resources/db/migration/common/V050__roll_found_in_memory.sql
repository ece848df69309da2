-- A roll of a million rows came in at a tenth of the speed because of these two; the look-up by name and by birth date is
-- answered by the index in memory.
drop index voter_by_name;
drop index voter_by_birth_date;
