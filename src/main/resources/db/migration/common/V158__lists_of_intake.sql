-- Envelopes are listed in the order in which they came, a page at a time; of those not keyed, their number is asked for.
create index envelope_by_place on envelope (election_id, place);
create index affirmation_field_by_state on affirmation_field (election_id, state, envelope_no);
