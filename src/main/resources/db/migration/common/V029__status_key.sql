-- The secret under which the lines of the look-up are hashed: one for the office, made when first needed, never shown.
create table status_key (
    key_no integer primary key check (key_no = 1),
    secret varchar(64) not null check (char_length(secret) = 64),
    made_at timestamp with time zone not null
);

-- Which lines are of one receipt, under the same secret, so that an old line goes when its key changes. No program
-- wrote the table yet.
alter table status_line add column receipt_hash varchar(64) not null check (char_length(receipt_hash) = 64);

create index status_line_by_receipt on status_line (receipt_hash);
