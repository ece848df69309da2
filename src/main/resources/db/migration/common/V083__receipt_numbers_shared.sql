-- A receipt number may be missing, or be printed on two envelopes: both come in, and a person settles it. The column is
-- made anew because each database has its own name for the old constraint. Compared are letters and digits.
alter table envelope add column receipt_as_written varchar(60) default '' not null;
update envelope set receipt_as_written = receipt_no;
alter table envelope drop column receipt_no;
alter table envelope rename column receipt_as_written to receipt_no;
alter table envelope add column receipt_compared varchar(60) default '' not null;
update envelope set receipt_compared = upper(replace(replace(receipt_no, '-', ''), ' ', ''));
create index envelope_by_receipt on envelope (receipt_compared);

-- The envelope that has the number printed on this one, which was received under another.
alter table envelope add column number_also_on varchar(60);
alter table envelope add foreign key (election_id, number_also_on) references envelope;

-- What a person settled about a number that is missing or on several envelopes; those that had it then.
create table number_check (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    check_no integer not null,
    mark varchar(20) not null check (mark in ('no_receipt', 'receipt_shared', 'number_shared')),
    settled varchar(10) not null check (settled in ('confirmed', 'corrected')),
    envelopes varchar not null,
    because varchar(1000) not null,
    settled_by varchar(60) not null references office_user,
    settled_at timestamp with time zone not null,
    primary key (election_id, envelope_no, check_no),
    foreign key (election_id, envelope_no) references envelope
);
