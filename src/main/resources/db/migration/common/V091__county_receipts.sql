-- The other county's word that it received an envelope that was sent on; set aside when the case is reopened.
create table county_receipt (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    receipt_no integer not null,
    received_on date not null,
    received_by varchar(200) not null,
    county_reference varchar(200) not null,
    recorded_by varchar(60) not null references office_user,
    recorded_at timestamp with time zone not null,
    set_aside_at timestamp with time zone,
    primary key (election_id, envelope_no, receipt_no),
    foreign key (election_id, envelope_no) references envelope_case
);
