-- The best voter of each envelope by the sum of its weights, written as a file of links.

copy (
    select envelope_no, arg_max(voter_id, score) as voter_id, max(score) as score
    from (select envelope_no, voter_id, ${score} as score from graded)
    group by envelope_no
) to '${links}' (header, delimiter ',');
