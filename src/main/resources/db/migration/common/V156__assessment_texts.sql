-- Facts and content of an assessment are made small together (review.assess.KeptTexts). What was written before stays as it
-- was: a row has either the two texts or these bytes.
alter table assessment add column texts kept_bytes;
alter table assessment alter column facts drop not null;
alter table assessment alter column content drop not null;
alter table assessment add constraint assessment_has_its_texts check (
    texts is null and facts is not null and content is not null
    or texts is not null and facts is null and content is null);
