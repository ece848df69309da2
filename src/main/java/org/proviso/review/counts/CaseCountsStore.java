package org.proviso.review.counts;

import java.util.EnumMap;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseState;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Counts rows of the case tables. */
@Repository
class CaseCountsStore {

    private final JdbcClient jdbc;

    CaseCountsStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<CaseState, Integer> states(ElectionId electionId) {
        return counts(
                CaseState.class,
                "select state as code, count(*) as n from envelope_case where election_id = ? group by state",
                electionId);
    }

    Map<DecisionOutcome, Integer> decided(ElectionId electionId) {
        return counts(DecisionOutcome.class, """
                select outcome as code, count(*) as n from decision
                where election_id = ? and set_aside_at is null group by outcome""", electionId);
    }

    int with(ElectionId electionId, UserName userName) {
        return jdbc.sql("select count(*) from envelope_case where election_id = ? and state = ? and taken_by = ?")
                .params(electionId, CaseState.IN_REVIEW.code(), userName)
                .query(Integer.class)
                .single();
    }

    int proposedByOthers(ElectionId electionId, UserName userName) {
        return jdbc.sql("""
                        select count(*) from envelope_case c
                        left join end_proposal e on e.election_id = c.election_id and e.envelope_no = c.envelope_no
                            and e.state = 'standing'
                        left join proposal p on p.election_id = c.election_id and p.envelope_no = c.envelope_no
                            and p.state = 'standing' and e.proposal_no is null
                        where c.election_id = ? and c.state = ? and coalesce(e.proposed_by, p.proposed_by) <> ?""")
                .params(electionId, CaseState.PROPOSED.code(), userName)
                .query(Integer.class)
                .single();
    }

    private <E extends Enum<E> & Code> Map<E, Integer> counts(Class<E> kind, String sql, ElectionId electionId) {
        Map<E, Integer> counts = new EnumMap<>(kind);
        jdbc.sql(sql).param(electionId).query(row -> {
            counts.put(Code.find(kind, row.getString("code")).orElseThrow(), row.getInt("n"));
        });
        return counts;
    }
}
