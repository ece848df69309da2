-- A naive yardstick: what an office might write in an afternoon. Equal fields only, best by how many agree.

create table roll as select voter_id, upper(last_name) as l, upper(first_name) as f, date_of_birth as b, house_number as h,
    nullif(id_last4, '') as n
from csvread('${roll}');

create table envelope as select envelope_no, upper(last_name) as l, upper(first_name) as f,
    nullif(date_of_birth, '') as b, regexp_replace(residence_address_line, ' .*', '') as h, nullif(id_last4, '') as n
from csvread('${envelopes}');

create index roll_name on roll(l, f);

create index roll_born on roll(b, l);

create index roll_number on roll(n, b);

create table pair as
select e.envelope_no, r.voter_id from envelope e join roll r on r.l = e.l and r.f = e.f
union
select e.envelope_no, r.voter_id from envelope e join roll r on r.b = e.b and r.l = e.l
union
select e.envelope_no, r.voter_id from envelope e join roll r on r.n = e.n and r.b = e.b;

create index roll_id on roll(voter_id);

create index envelope_id on envelope(envelope_no);

create table scored as
select p.envelope_no, p.voter_id, case when r.l = e.l then 2 else 0 end + case when r.f = e.f then 2 else 0 end
    + case when r.b = e.b then 3 else 0 end + case when r.n = e.n then 4 else 0 end
    + case when r.h = e.h then 1 else 0 end as score
from pair p join envelope e on e.envelope_no = p.envelope_no join roll r on r.voter_id = p.voter_id;

call csvwrite('${links}', 'select envelope_no, voter_id, score from (
    select envelope_no, voter_id, score,
        row_number() over (partition by envelope_no order by score desc, voter_id) as place from scored)
    where place = 1');
