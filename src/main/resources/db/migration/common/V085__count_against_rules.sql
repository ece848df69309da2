-- Where a motion counts an envelope against the rules' answer: what they said when it was moved (null where it follows them), and whether a record said that the voter had voted already.
alter table motion_envelope add column rules_say varchar(30);
alter table motion_envelope add column known_to_have_voted boolean default false not null;
