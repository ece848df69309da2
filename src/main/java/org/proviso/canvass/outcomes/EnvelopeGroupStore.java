package org.proviso.canvass.outcomes;

import java.util.Collection;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Envelopes with their cases and the decisions that stand, added up by the database. */
@Repository
class EnvelopeGroupStore {

    private static final String EACH = """
            from envelope e
            left join envelope_case c on c.election_id = e.election_id and c.envelope_no = e.envelope_no
            left join decision d on d.election_id = e.election_id and d.envelope_no = e.envelope_no
                and d.set_aside_at is null and not exists (select 1 from decision n
                    where n.election_id = d.election_id and n.envelope_no = d.envelope_no and n.set_aside_at is null
                        and n.decision_no > d.decision_no)
            where e.election_id = :election
            """;

    /** A ballot that counts is kept apart as its decision says; of all others the envelope's own mark is all there is. */
    private static final String EXTENDED =
            "case when d.outcome is null or d.outcome = 'reject' then e.extended_hours = 'yes' else d.held_apart end";

    private final JdbcClient jdbc;

    EnvelopeGroupStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every envelope of an election; held are those named, or all. */
    List<EnvelopeGroup> groups(ElectionId electionId, boolean allHeld, Collection<EnvelopeNumber> held) {
        return jdbc.sql("""
                        select source, voting_location, cast_extended, extended, issue_reasons, held, state, outcome,
                            reasons, count(*) as number
                        from (select e.source, e.voting_location, e.extended_hours = 'yes' as cast_extended,
                            e.issue_reasons, c.state, d.outcome, coalesce(d.reasons, '') as reasons,
                            case when e.envelope_no in (:held) then 1 else :all end = 1 as held,
                        """ + EXTENDED + " as extended " + EACH + """
                        ) one
                        group by source, voting_location, cast_extended, extended, issue_reasons, held, state, outcome,
                            reasons
                        order by voting_location, source, issue_reasons""")
                .param("election", electionId)
                .param("all", allHeld ? 1 : 0)
                .param("held", held.isEmpty() ? List.of("") : held)
                .query(EnvelopeGroup.class)
                .list();
    }

    /** The envelopes that are kept apart as cast in extended hours. */
    List<EnvelopeNumber> extended(ElectionId electionId) {
        return jdbc.sql("select e.envelope_no " + EACH + " and " + EXTENDED)
                .param("election", electionId)
                .query(EnvelopeNumber.class)
                .list();
    }
}
