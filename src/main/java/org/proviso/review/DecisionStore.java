package org.proviso.review;

import java.sql.ResultSet;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.deciding.DecisionOutcome;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of decisions; the newest that was not set aside stands. */
@Repository
public class DecisionStore {

    private static final String SELECT =
            "select d.*, d.decision_no as number, d.outcome as \"as\", d.assessment_no as assessment ";

    /** A decision that stands on an envelope. */
    private record Standing(EnvelopeNumber envelopeNo, Decision decision) {}

    private final JdbcClient jdbc;
    private final NamedParameterJdbcOperations batches;
    private final Clock clock;

    DecisionStore(JdbcClient jdbc, NamedParameterJdbcOperations batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    /** What is decided of one case, on which assessment. */
    public record New(Settlement settlement, Set<String> contests, Decision.DecidedBallot ballot, int assessment) {}

    /** A decision as its row has it. */
    private record Made(
            Settlement settlement,
            int number,
            String reasons,
            @Nullable String departs,
            String contests,
            int assessment,
            String decider,
            DecidedBy by,
            Instant decidedAt,
            Decision.DecidedBallot ballot) {

        static Made of(New settled, int number, DecidedBy by, String decider, Instant at) {
            Settlement settlement = settled.settlement();
            String departs = settlement.grounds().departsBecause();
            return new Made(
                    settlement,
                    number,
                    CodeListColumn.of(settlement.grounds().reasons()),
                    departs.isBlank() ? null : departs,
                    String.join(";", settled.contests()),
                    settled.assessment(),
                    decider,
                    by,
                    at,
                    settled.ballot());
        }
    }

    public void insert(New settled, DecidedBy by, String decider) {
        insert(settled.settlement().key().electionId(), List.of(settled), by, decider);
    }

    /** Writes decisions of one election that were made together, each under the next number of its case. */
    public void insert(ElectionId electionId, List<New> made, DecidedBy by, String decider) {
        Map<EnvelopeNumber, Integer> last = last(
                electionId,
                made.stream()
                        .map(settled -> settled.settlement().key().envelopeNo())
                        .toList());
        Instant now = clock.instant();
        List<Made> rows = made.stream()
                .map(settled -> {
                    EnvelopeNumber envelopeNo = settled.settlement().key().envelopeNo();
                    return Made.of(settled, last.getOrDefault(envelopeNo, 0) + 1, by, decider, now);
                })
                .toList();
        batches.batchUpdate("""
                insert into decision (election_id, envelope_no, decision_no, outcome, reasons, legal_reference,
                    departs_because, contests, assessment_no, decider, session_no, motion_no, decided_at,
                    style_cast, style_right, held_apart)
                values (:settlement.key.electionId, :settlement.key.envelopeNo, :number, :settlement.as, :reasons,
                    :settlement.grounds.legalReference, :departs, :contests, :assessment, :decider, :by.sessionNo,
                    :by.motionNo, :decidedAt, :ballot.styleCast, :ballot.styleRight, :ballot.heldApart)""", SqlParameterSourceUtils.createBatch(rows));
    }

    public Optional<Decision> standing(EnvelopeKey key) {
        return jdbc.sql(SELECT + """
                        from decision d where d.election_id = ? and d.envelope_no = ? and d.set_aside_at is null
                        order by d.decision_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query(Decision.class)
                .optional();
    }

    /** The decisions that stand on these envelopes, by envelope number. */
    public Map<EnvelopeNumber, Decision> standing(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, Decision> standing = new HashMap<>();
        jdbc.sql(SELECT + """
                        from unnest(cast(? as varchar array)) as wanted (id)
                        join decision d on d.election_id = ? and d.envelope_no = wanted.id
                        where d.set_aside_at is null order by d.decision_no""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query(Standing.class)
                .list()
                .forEach(row -> standing.put(row.envelopeNo(), row.decision()));
        return standing;
    }

    /** Every decision that stands in an election, by envelope number. */
    public Map<EnvelopeNumber, Decision> standing(ElectionId electionId) {
        Map<EnvelopeNumber, Decision> standing = new LinkedHashMap<>();
        jdbc.sql(SELECT + "from decision d where d.election_id = ? and d.set_aside_at is null order by d.envelope_no")
                .param(electionId)
                .query(Standing.class)
                .list()
                .forEach(row -> standing.put(row.envelopeNo(), row.decision()));
        return standing;
    }

    /** What stood at a moment, by envelope number. */
    public Map<EnvelopeNumber, DecisionOutcome> standingAt(ElectionId electionId, Instant at) {
        Map<EnvelopeNumber, DecisionOutcome> standing = new TreeMap<>();
        jdbc.sql("""
                        select envelope_no, outcome from decision where election_id = ? and decided_at <= ?
                            and (set_aside_at is null or set_aside_at > ?)""").params(electionId, at, at).query((ResultSet row) -> {
            standing.put(
                    new EnvelopeNumber(row.getString("envelope_no")),
                    Code.find(DecisionOutcome.class, row.getString("outcome")).orElseThrow());
        });
        return standing;
    }

    /** Decisions that stand, the newest first: so many of them after the first few. */
    public List<DecidedCase> standing(ElectionId electionId, int offset, int limit) {
        return jdbc.sql(SELECT + """
                        , c.state, c.version from decision d
                        join envelope_case c on c.election_id = d.election_id and c.envelope_no = d.envelope_no
                        where d.election_id = ? and d.set_aside_at is null
                        order by d.decided_at desc, d.envelope_no limit ? offset ?""")
                .params(electionId, limit, offset)
                .query(DecidedCase.class)
                .list();
    }

    /** How many decisions of each kind stand. */
    public Map<DecisionOutcome, Integer> counts(ElectionId electionId) {
        Map<DecisionOutcome, Integer> counts = new EnumMap<>(DecisionOutcome.class);
        jdbc.sql("""
                        select outcome, count(*) as number from decision
                        where election_id = ? and set_aside_at is null group by outcome""").param(electionId).query((ResultSet row) -> {
            counts.put(
                    Code.find(DecisionOutcome.class, row.getString("outcome")).orElseThrow(), row.getInt("number"));
        });
        return counts;
    }

    public void setAside(EnvelopeKey key, String because) {
        jdbc.sql("""
                        update decision set set_aside_at = ?, set_aside_because = ?
                        where election_id = ? and envelope_no = ? and set_aside_at is null""")
                .params(clock.instant(), because, key.electionId(), key.envelopeNo())
                .update();
    }

    /** The number of the last decision, whatever became of it, by envelope number. */
    private Map<EnvelopeNumber, Integer> last(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, Integer> last = new HashMap<>();
        jdbc.sql("""
                        select d.envelope_no, max(d.decision_no) as number
                        from unnest(cast(? as varchar array)) as wanted (id)
                        join decision d on d.election_id = ? and d.envelope_no = wanted.id group by d.envelope_no""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query((ResultSet row) -> {
                    last.put(new EnvelopeNumber(row.getString("envelope_no")), row.getInt("number"));
                });
        return last;
    }
}
