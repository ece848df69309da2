package org.proviso.review.assess;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.review.CodeListColumn;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of assessments: each one in its three ways, with all that it was made from. */
@Repository
public class AssessmentStore {

    private static final int BATCH = 300;
    /** One pass over the short columns: a join with the newest number is slow where the database has no statistics yet. */
    private static final String ROWS = """
            select envelope_no, assessment_no, max(as_of) as as_of,
                max(case when way = 'settled' then recommendation end) as recommendation,
                max(case when way = 'settled' then reasons end) as reasons,
                max(case when way = 'settled' and held_apart then 1 else 0 end) as held_apart,
                max(case when way = 'outlook' then recommendation end) as outlook,
                max(case when way = 'outlook' then reasons end) as outlook_reasons
            from (select envelope_no, assessment_no, way, as_of, recommendation, reasons, held_apart,
                    rank() over (partition by envelope_no order by assessment_no desc) as place
                from %s) newest
            where place = 1 group by envelope_no, assessment_no order by envelope_no
            """;

    /** One way of an assessment as its row is written. */
    @SuppressWarnings("ArrayRecordComponent") // written once, compared by nobody
    private record Line(
            EnvelopeKey key, int number, KeptAssessment kept, byte[] texts, String reasons, Instant assessedAt) {}

    private final JdbcClient jdbc;
    private final NamedParameterJdbcOperations batches;
    private final Clock clock;

    AssessmentStore(JdbcClient jdbc, NamedParameterJdbcOperations batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    /** Writes the three ways of each case under its next number, and gives those. */
    public Map<EnvelopeKey, Integer> insert(ElectionId electionId, Map<EnvelopeKey, List<KeptAssessment>> assessed) {
        Map<EnvelopeNumber, Integer> last = last(electionId, assessed.keySet());
        Map<EnvelopeKey, Integer> numbers = new LinkedHashMap<>();
        List<Line> lines = new ArrayList<>();
        assessed.forEach((key, ways) -> {
            int number = last.getOrDefault(key.envelopeNo(), 0) + 1;
            numbers.put(key, number);
            ways.forEach(kept -> lines.add(line(key, number, kept)));
        });
        insert(lines);
        return numbers;
    }

    /** Writes the first assessments of many cases. */
    public void insertFirst(Map<EnvelopeKey, List<KeptAssessment>> assessed) {
        List<Line> lines = new ArrayList<>();
        assessed.forEach((key, ways) -> {
            ways.forEach(kept -> lines.add(line(key, 1, kept)));
            if (lines.size() >= BATCH) {
                insert(lines);
                lines.clear();
            }
        });
        insert(lines);
    }

    /** Those of these cases of which what was written last was made from the same and came out the same, whenever. */
    Set<EnvelopeKey> sayingTheSame(ElectionId electionId, Map<EnvelopeKey, List<KeptAssessment>> assessed) {
        Map<EnvelopeNumber, List<KeptRow>> last = new HashMap<>();
        jdbc.sql("""
                        select a.* from unnest(cast(? as varchar array)) as wanted (id)
                        join assessment a on a.election_id = ? and a.envelope_no = wanted.id
                        where a.assessment_no = (select max(n.assessment_no) from assessment n
                            where n.election_id = a.election_id and n.envelope_no = a.envelope_no)""")
                .param(numbers(assessed.keySet()))
                .param(electionId)
                .query(KeptRow.class)
                .list()
                .forEach(row -> last.computeIfAbsent(row.envelopeNo(), any -> new ArrayList<>())
                        .add(row));
        Set<EnvelopeKey> same = new HashSet<>();
        assessed.forEach((key, ways) -> {
            if (areSame(last.getOrDefault(key.envelopeNo(), List.of()), ways)) {
                same.add(key);
            }
        });
        return same;
    }

    private static String[] numbers(Collection<EnvelopeKey> keys) {
        return keys.stream().map(EnvelopeKey::envelopeNo).map(Key::value).toArray(String[]::new);
    }

    private static boolean areSame(List<KeptRow> last, List<KeptAssessment> ways) {
        return last.size() == ways.size()
                && ways.stream().allMatch(now -> last.stream().anyMatch(was -> isSame(was, now)));
    }

    private static boolean isSame(KeptRow was, KeptAssessment now) {
        return was.way() == now.way()
                && was.packHash().equals(now.packHash())
                && was.engineVersion() == now.engineVersion()
                && was.recommendation().equals(now.recommendation().code())
                && was.reasons().equals(CodeListColumn.of(now.reasons()))
                && was.heldApart() == now.heldApart()
                && was.read().facts().equals(now.facts());
    }

    Optional<AssessmentRow> latest(EnvelopeKey key) {
        return jdbc.sql(ROWS.formatted("assessment where election_id = ? and envelope_no = ?"))
                .params(key.electionId(), key.envelopeNo())
                .query((row, number) -> row(row, key.electionId()))
                .optional();
    }

    /** What was assessed last of each of these cases. */
    public List<AssessmentRow> latest(ElectionId electionId, Collection<EnvelopeKey> keys) {
        return jdbc.sql(ROWS.formatted("unnest(cast(? as varchar array)) as wanted (id)"
                        + " join assessment on election_id = ? and envelope_no = wanted.id"))
                .param(numbers(keys))
                .param(electionId)
                .query((row, number) -> row(row, electionId))
                .list();
    }

    /** What was assessed last of every case of an election, by envelope number. */
    public List<AssessmentRow> latest(ElectionId electionId) {
        return jdbc.sql(ROWS.formatted("assessment where election_id = ?"))
                .param(electionId)
                .query((row, number) -> row(row, electionId))
                .list();
    }

    /** Settled cases whose last assessment names other rules than these. */
    List<StaleCase> stale(ElectionId electionId, String packHash) {
        return jdbc.sql("""
                        select c.election_id, c.envelope_no, c.state, a.recommendation as said, a.pack_hash
                        from envelope_case c join assessment a
                            on a.election_id = c.election_id and a.envelope_no = c.envelope_no and a.way = 'settled'
                        where c.election_id = ? and c.state in ('decided', 'released', 'sent_on', 'ended')
                            and a.pack_hash <> ? and a.assessment_no = (select max(b.assessment_no) from assessment b
                                where b.election_id = c.election_id and b.envelope_no = c.envelope_no)
                        order by c.envelope_no""").params(electionId, packHash).query(StaleCase.class).list();
    }

    /** The number of what was written last, by envelope number. */
    private Map<EnvelopeNumber, Integer> last(ElectionId electionId, Collection<EnvelopeKey> keys) {
        Map<EnvelopeNumber, Integer> last = new HashMap<>();
        jdbc.sql("""
                        select a.envelope_no, max(a.assessment_no) as number
                        from unnest(cast(? as varchar array)) as wanted (id)
                        join assessment a on a.election_id = ? and a.envelope_no = wanted.id
                        group by a.envelope_no""").param(numbers(keys)).param(electionId).query((ResultSet row) -> {
            last.put(new EnvelopeNumber(row.getString("envelope_no")), row.getInt("number"));
        });
        return last;
    }

    private Line line(EnvelopeKey key, int number, KeptAssessment kept) {
        byte[] texts = new KeptTexts(kept.facts(), kept.content()).small();
        return new Line(key, number, kept, texts, CodeListColumn.of(kept.reasons()), clock.instant());
    }

    private void insert(List<Line> lines) {
        batches.batchUpdate("""
                insert into assessment (election_id, envelope_no, assessment_no, way, as_of, pack_hash,
                    engine_version, recommendation, reasons, held_apart, texts, assessed_at)
                values (:key.electionId, :key.envelopeNo, :number, :kept.way, :kept.asOf, :kept.packHash,
                    :kept.engineVersion, :kept.recommendation, :reasons, :kept.heldApart, :texts, :assessedAt)""", SqlParameterSourceUtils.createBatch(lines));
    }

    private static AssessmentRow row(ResultSet row, ElectionId electionId) throws SQLException {
        return new AssessmentRow(
                new EnvelopeKey(electionId, new EnvelopeNumber(row.getString("envelope_no"))),
                row.getInt("assessment_no"),
                row.getObject("as_of", LocalDateTime.class),
                recommendation(row.getString("recommendation")),
                CodeListColumn.reasons(row.getString("reasons")),
                row.getBoolean("held_apart"),
                recommendation(row.getString("outlook")),
                CodeListColumn.reasons(row.getString("outlook_reasons")));
    }

    private static Recommendation recommendation(String code) {
        return Code.find(Recommendation.class, code).orElseThrow();
    }
}
