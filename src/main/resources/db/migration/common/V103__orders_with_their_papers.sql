-- The number of the case in which a court ordered something and the judge who signed it, and the order itself as a scan.
alter table court_order add column case_no varchar(100) default '' not null;
alter table court_order add column judge varchar(200) default '' not null;

create table court_order_scan (
    election_id varchar(60) not null,
    order_no integer not null,
    scan_no integer not null,
    media_type varchar(60) not null,
    sha256 varchar(64) not null,
    content image_bytes not null,
    kept_by varchar(60) not null references office_user,
    kept_at timestamp with time zone not null,
    primary key (election_id, order_no, scan_no),
    foreign key (election_id, order_no) references court_order
);
