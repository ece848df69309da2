package org.proviso.review.queue;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Rule;
import org.proviso.review.CaseVersion;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The queue of reviewers in the table of cases: whose turn is next, in the order of its index. */
@Repository
class QueueStore {

    /** Stands for "nobody noted a moment": after all that were noted. */
    static final LocalDateTime LAST = LocalDateTime.of(9999, 12, 31, 0, 0);

    private final JdbcClient jdbc;

    QueueStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * The first open case that needs an office hand, leaving out those passed over, those that wait for an answer, and those
     * whose signature waits for somebody else's look.
     */
    Optional<CaseVersion> first(ElectionId electionId, Collection<EnvelopeNumber> passedOver, SignatureLooker looker) {
        return jdbc.sql("""
                        select c.election_id, c.envelope_no, c.version from envelope_case c
                        where c.election_id = :election and c.state = 'open' and c.queue_rank <= :last
                            and c.envelope_no not in (:passed)
                            and not exists (select 1 from research_request r where r.election_id = c.election_id
                                and r.envelope_no = c.envelope_no and r.found is null)
                        """ + SecondReviewQueueStore.MAY_LOOK + """
                        order by c.election_id, c.state, c.queue_rank, c.queue_at, c.envelope_no limit 1""")
                .param("election", electionId)
                .param("last", QueueReason.IN_TURN.rank())
                .param("looker", looker.userName())
                .param("otherPartyThan", looker.otherPartyThan())
                .param("passed", passedOver.isEmpty() ? List.of("") : passedOver)
                .query(CaseVersion.class)
                .optional();
    }

    /** Which rules a case waits for, found under the rules of that hash. */
    record Waiting(Collection<Rule> rules, String packHash) {

        String keys() {
            return rules.stream().map(Rule::key).collect(Collectors.joining(";"));
        }
    }

    /** Puts a case at its place, and what lists are narrowed by beside it; and which rules it waits for. */
    void place(Envelope envelope, ElectionId electionId, QueuePlace place, Recommendation outlook, Waiting waiting) {
        jdbc.sql("""
                        update envelope_case set queue_at = :at, outlook = :outlook, queue_reasons = :reasons,
                            queue_location = :location, queue_precinct = :precinct, queue_language = :language,
                            waiting_rules = :waiting, waiting_pack = :pack,
                            queue_rank = case when queue_rank = :changed and :rank = :inTurn
                                and state in ('open', 'in_review') then queue_rank else :rank end
                        where election_id = :election and envelope_no = :envelope""")
                .param("at", place.at() == null ? LAST : place.at())
                .param("outlook", outlook.code())
                .param("reasons", String.join(";", envelope.cast().issueReasons()))
                .param("location", envelope.cast().votingLocation())
                .param("precinct", envelope.cast().precinct())
                .param("language", envelope.affirmation().language())
                .param("waiting", waiting.keys())
                .param("pack", waiting.packHash())
                .param("changed", QueueReason.CHANGED.rank())
                .param("rank", place.turn().rank())
                .param("inTurn", QueueReason.IN_TURN.rank())
                .param("election", electionId)
                .param("envelope", envelope.envelopeNo())
                .update();
    }

    /** Moves a case ahead in the queue. */
    void changed(EnvelopeKey key) {
        jdbc.sql("""
                        update envelope_case set queue_rank = ?
                        where election_id = ? and envelope_no = ? and queue_rank = ?""")
                .params(QueueReason.CHANGED.rank(), key.electionId(), key.envelopeNo(), QueueReason.IN_TURN.rank())
                .update();
    }
}
