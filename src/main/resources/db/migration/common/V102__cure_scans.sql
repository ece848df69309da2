-- A scan or photo of what a voter brought, beside the evidence that it shows.
create table cure_scan (
    election_id varchar(60) not null,
    envelope_no varchar(60) not null,
    cure_no integer not null,
    scan_no integer not null,
    media_type varchar(60) not null,
    sha256 varchar(64) not null,
    content image_bytes not null,
    kept_by varchar(60) not null references office_user,
    kept_at timestamp with time zone not null,
    primary key (election_id, envelope_no, cure_no, scan_no),
    foreign key (election_id, envelope_no, cure_no) references cure_evidence
);
