package org.proviso.review;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Code;
import org.proviso.core.deciding.DecisionOutcome;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of decisions; the newest that was not set aside stands. */
@Repository
public class DecisionStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    DecisionStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public void insert(
            Settlement settlement,
            Set<String> contests,
            Decision.DecidedBallot ballot,
            int assessment,
            DecidedBy by,
            String decider) {
        CaseKey key = settlement.key();
        String departs = settlement.grounds().departsBecause();
        jdbc.sql("""
                        insert into decision (election_id, envelope_no, decision_no, outcome, reasons, legal_reference,
                            departs_because, contests, assessment_no, decider, session_no, motion_no, decided_at,
                            style_cast, style_right, held_apart)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .param(key.electionId())
                .param(key.envelopeNo())
                .param(next(key))
                .param(settlement.as().code())
                .param(CodeListColumn.of(settlement.grounds().reasons()))
                .param(settlement.grounds().legalReference())
                .param(departs.isBlank() ? null : departs)
                .param(String.join(";", contests))
                .param(assessment)
                .param(decider)
                .param(by.sessionNo())
                .param(by.motionNo())
                .param(now())
                .param(ballot.styleCast())
                .param(ballot.styleRight())
                .param(ballot.heldApart())
                .update();
    }

    public Optional<Decision> standing(CaseKey key) {
        return jdbc.sql("""
                        select * from decision where election_id = ? and envelope_no = ? and set_aside_at is null
                        order by decision_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query(DecisionStore::row)
                .optional();
    }

    /** Every decision that stands in an election, by envelope number. */
    public Map<String, Decision> standing(String electionId) {
        Map<String, Decision> standing = new LinkedHashMap<>();
        jdbc.sql("select * from decision where election_id = ? and set_aside_at is null order by envelope_no")
                .param(electionId)
                .query((ResultSet row) -> {
                    standing.put(row.getString("envelope_no"), row(row, 0));
                });
        return standing;
    }

    /** Decisions that stand, the newest first: so many of them after the first few. */
    public List<DecidedCase> standing(String electionId, int offset, int limit) {
        return jdbc.sql("""
                        select d.*, c.state, c.version as case_version from decision d
                        join envelope_case c on c.election_id = d.election_id and c.envelope_no = d.envelope_no
                        where d.election_id = ? and d.set_aside_at is null
                        order by d.decided_at desc, d.envelope_no limit ? offset ?""")
                .params(electionId, limit, offset)
                .query((row, number) -> new DecidedCase(
                        new CaseKey(electionId, row.getString("envelope_no")),
                        Code.find(CaseState.class, row.getString("state")).orElseThrow(),
                        row.getInt("case_version"),
                        row(row, number)))
                .list();
    }

    /** How many decisions of each kind stand. */
    public Map<DecisionOutcome, Integer> counts(String electionId) {
        Map<DecisionOutcome, Integer> counts = new EnumMap<>(DecisionOutcome.class);
        jdbc.sql("""
                        select outcome, count(*) as number from decision
                        where election_id = ? and set_aside_at is null group by outcome""").param(electionId).query((ResultSet row) -> {
            counts.put(
                    Code.find(DecisionOutcome.class, row.getString("outcome")).orElseThrow(), row.getInt("number"));
        });
        return counts;
    }

    public void setAside(CaseKey key, String because) {
        jdbc.sql("""
                        update decision set set_aside_at = ?, set_aside_because = ?
                        where election_id = ? and envelope_no = ? and set_aside_at is null""").params(now(), because, key.electionId(), key.envelopeNo()).update();
    }

    private int next(CaseKey key) {
        return jdbc.sql("""
                        select coalesce(max(decision_no), 0) + 1 from decision
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
    }

    private static Decision row(ResultSet row, int number) throws SQLException {
        return new Decision(
                row.getInt("decision_no"),
                Code.find(DecisionOutcome.class, row.getString("outcome")).orElseThrow(),
                CodeListColumn.reasons(row.getString("reasons")),
                row.getString("legal_reference"),
                row.getString("departs_because"),
                CodeListColumn.words(row.getString("contests")),
                row.getInt("assessment_no"),
                row.getString("decider"),
                row.getObject("session_no", Integer.class),
                row.getObject("motion_no", Integer.class),
                row.getObject("decided_at", OffsetDateTime.class).toInstant(),
                new Decision.DecidedBallot(
                        row.getString("style_cast"), row.getString("style_right"), row.getBoolean("held_apart")));
    }

    private OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
