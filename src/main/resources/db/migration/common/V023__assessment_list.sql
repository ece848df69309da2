-- A list of cases needs the short columns of the newest assessments only: they are read from this index, without the
-- long texts of facts and content.
create index assessment_list on assessment
    (election_id, envelope_no, assessment_no, way, recommendation, held_apart, as_of, reasons);
