-- What stood on the sheet of balances before somebody typed another number; null where nothing did, and for older notes.
alter table noted_figure add column number_before integer;
