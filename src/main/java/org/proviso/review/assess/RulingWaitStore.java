package org.proviso.review.assess;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.CaseState;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which rules cases wait for, as it stands with each case since it was assessed last. */
@Repository
class RulingWaitStore {

    /** Cases that wait for the same rules, by their keys: how many there are, and one of the first of them. */
    record Wait(List<String> waitingRules, int number, EnvelopeNumber envelopeNo) {}

    private final JdbcClient jdbc;

    RulingWaitStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Up to so many cases of each list of rules, in the order of envelope numbers, found under these rules. */
    List<Wait> waiting(ElectionId electionId, String packHash, Set<CaseState> states, int first) {
        return jdbc.sql("""
                        select waiting_rules, number, envelope_no
                        from (select waiting_rules, envelope_no, count(*) over (partition by waiting_rules) as number,
                                row_number() over (partition by waiting_rules order by envelope_no) as place
                            from envelope_case
                            where election_id = :election and state in (:states) and waiting_rules <> ''
                                and waiting_pack = :pack) w
                        where place <= :first order by envelope_no""")
                .param("election", electionId)
                .param("states", codes(states))
                .param("pack", packHash)
                .param("first", first)
                .query(Wait.class)
                .list();
    }

    /** Cases of which that was found under other rules, or never. */
    List<EnvelopeNumber> ofOtherRules(ElectionId electionId, String packHash, Set<CaseState> states) {
        return jdbc.sql("""
                        select envelope_no from envelope_case
                        where election_id = :election and state in (:states) and waiting_pack <> :pack
                        order by envelope_no""")
                .param("election", electionId)
                .param("states", codes(states))
                .param("pack", packHash)
                .query(EnvelopeNumber.class)
                .list();
    }

    private static List<String> codes(Set<CaseState> states) {
        return states.stream().map(Code::code).sorted().collect(Collectors.toList());
    }
}
