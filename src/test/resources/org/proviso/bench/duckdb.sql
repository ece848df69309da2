-- The yardstick: a join that a careful analyst would write in DuckDB. Blocks by eight pairs of fields, comparison of
-- fields in grades (0 unknown, 1 agree, then worse), and a weight for each grade that was trained on the truth of a sample
-- (Weights.java), which the program under measure never sees. One statement a paragraph.

create table roll as
select row_number() over () as r, voter_id,
    regexp_replace(upper(last_name), '[^A-Z]', '', 'g') as last,
    regexp_replace(upper(first_name), '[^A-Z]', '', 'g') as first,
    upper(middle_name) as middle, upper(suffix) as suffix,
    case when date_of_birth > '1900-01-01' then date_of_birth end as born,
    house_number as house, upper(street) as street, zip, nullif(id_last4, '') as last4
from read_csv('${roll}', header = true, all_varchar = true, nullstr = '~');

create table envelope as
select row_number() over () as e, envelope_no,
    regexp_replace(upper(last_name), '[^A-Z]', '', 'g') as last,
    regexp_replace(upper(first_name), '[^A-Z]', '', 'g') as first,
    upper(middle_name) as middle, upper(suffix) as suffix,
    nullif(date_of_birth, '') as born,
    regexp_extract(residence_address_line, '^(\d+)', 1) as house,
    regexp_extract(former_address_line, '^(\d+)', 1) as former_house,
    upper(regexp_replace(residence_address_line, '^\d+ *', '')) as street,
    upper(regexp_replace(former_address_line, '^\d+ *', '')) as former_street,
    zip, nullif(id_last4, '') as last4
from read_csv('${envelopes}', header = true, all_varchar = true, nullstr = '~') ${sample};

create table pair as
select distinct e, r from (
    select e, r from envelope join roll on envelope.born = roll.born and left(envelope.first, 1) = left(roll.first, 1)
    union all
    select e, r from envelope join roll on envelope.born = roll.born and left(envelope.last, 3) = left(roll.last, 3)
    union all
    select e, r from envelope join roll on envelope.last4 = roll.last4 and envelope.born = roll.born
    union all
    select e, r from envelope join roll on envelope.last4 = roll.last4 and left(envelope.last, 3) = left(roll.last, 3)
    union all
    select e, r from envelope join roll on envelope.last4 = roll.last4 and left(envelope.first, 3) = left(roll.first, 3)
    union all
    select e, r from envelope join roll on envelope.last = roll.last and envelope.first = roll.first
    union all
    select e, r from envelope join roll on envelope.last = roll.first and envelope.first = roll.last
    union all
    select e, r from envelope join roll on envelope.last = roll.last and envelope.house = roll.house
    union all
    select e, r from envelope join roll
        on left(envelope.born, 4) = left(roll.born, 4) and envelope.last = roll.last and left(envelope.first, 1) = left(roll.first, 1)
);

create table bearer as select last, ln(count(*) + 1) as often from roll group by last;

create table graded as
select p.e, p.r, envelope_no, voter_id,
    case when e.last = r.last then 1
        when contains(e.last, r.last) or contains(r.last, e.last) then 2
        when jaro_winkler_similarity(e.last, r.last) >= 0.92 then 3
        when jaro_winkler_similarity(e.last, r.last) >= 0.85 then 4
        when e.last = r.first then 5
        else 6 end as g_last,
    case when e.first = r.first then 1
        when jaro_winkler_similarity(e.first, r.first) >= 0.9 then 2
        when jaro_winkler_similarity(e.first, r.first) >= 0.8 then 3
        when e.first = r.last then 4
        when e.first = r.middle or e.middle = r.first then 5
        when left(e.first, 1) = left(r.first, 1) then 6
        else 7 end as g_first,
    case when e.middle = '' or r.middle = '' then 0
        when e.middle = r.middle then 1
        when left(e.middle, 1) = left(r.middle, 1) then 2
        else 3 end as g_middle,
    case when e.suffix = r.suffix then 0 when e.suffix = '' or r.suffix = '' then 1 else 2 end as g_suffix,
    case when e.born is null or r.born is null then 0
        when e.born = r.born then 1
        when damerau_levenshtein(e.born, r.born) = 1 then 2
        when left(e.born, 4) = left(r.born, 4) and e.born[6:7] = r.born[9:10] and e.born[9:10] = r.born[6:7] then 3
        else 4 end as g_born,
    case when e.last4 is null or r.last4 is null then 0
        when e.last4 = r.last4 then 1
        when damerau_levenshtein(e.last4, r.last4) = 1 then 2
        else 3 end as g_last4,
    case when e.house = r.house and left(regexp_replace(e.street, '^(N|S|E|W|NORTH|SOUTH|EAST|WEST) ', ''), 5)
            = left(regexp_replace(r.street, '^(N|S|E|W|NORTH|SOUTH|EAST|WEST) ', ''), 5) then 1
        when e.former_house = r.house and left(regexp_replace(e.former_street, '^(N|S|E|W|NORTH|SOUTH|EAST|WEST) ', ''), 5)
            = left(regexp_replace(r.street, '^(N|S|E|W|NORTH|SOUTH|EAST|WEST) ', ''), 5) then 2
        when e.house = r.house then 3
        when e.zip = r.zip then 4
        else 5 end as g_home,
    case when g_last <> 1 then 0 when often > 9 then 1 when often > 7.5 then 2 when often > 6 then 3 when often > 4 then 4
        else 5 end as g_often
from pair p join envelope e on e.e = p.e join roll r on r.r = p.r join bearer on bearer.last = r.last;
