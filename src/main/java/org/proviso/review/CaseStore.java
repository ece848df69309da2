package org.proviso.review;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of cases: where each stands and who has it. */
@Repository
public class CaseStore {

    private static final int BATCH = 1_000;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;
    private final Clock clock;

    CaseStore(JdbcClient jdbc, JdbcTemplate batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    public Optional<EnvelopeCase> find(EnvelopeKey key) {
        return jdbc.sql("select * from envelope_case where election_id = ? and envelope_no = ?")
                .params(key.electionId(), key.envelopeNo())
                .query(EnvelopeCase.class)
                .optional();
    }

    /** Those of these cases that there are, by envelope number. */
    public Map<EnvelopeNumber, EnvelopeCase> find(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, EnvelopeCase> found = new TreeMap<>();
        jdbc.sql("""
                        select c.* from unnest(cast(? as varchar array)) as wanted (id)
                        join envelope_case c on c.election_id = ? and c.envelope_no = wanted.id""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query(EnvelopeCase.class)
                .list()
                .forEach(envelopeCase -> found.put(envelopeCase.key().envelopeNo(), envelopeCase));
        return found;
    }

    /** The case, held until the transaction ends; others who want to change it wait. */
    public Optional<EnvelopeCase> lock(EnvelopeKey key) {
        return jdbc.sql("select * from envelope_case where election_id = ? and envelope_no = ? for update")
                .params(key.electionId(), key.envelopeNo())
                .query(EnvelopeCase.class)
                .optional();
    }

    public List<EnvelopeCase> all(ElectionId electionId) {
        return jdbc.sql("select * from envelope_case where election_id = ? order by envelope_no")
                .param(electionId)
                .query(EnvelopeCase.class)
                .list();
    }

    List<EnvelopeCase> page(ElectionId electionId, int offset, int limit) {
        return jdbc.sql("select * from envelope_case where election_id = ? order by envelope_no limit ? offset ?")
                .params(electionId, limit, offset)
                .query(EnvelopeCase.class)
                .list();
    }

    int count(ElectionId electionId) {
        return jdbc.sql("select count(*) from envelope_case where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
    }

    List<EnvelopeCase> inState(ElectionId electionId, CaseState state) {
        return jdbc.sql("select * from envelope_case where election_id = ? and state = ? order by envelope_no")
                .params(electionId, state.code())
                .query(EnvelopeCase.class)
                .list();
    }

    /** Cases that somebody has, and on which nobody acted since. */
    public List<EnvelopeKey> takenBefore(ElectionId electionId, Instant before) {
        return jdbc.sql("""
                        select election_id, envelope_no from envelope_case
                        where election_id = ? and state = 'in_review' and taken_at < ? order by envelope_no""").params(electionId, before).query(EnvelopeKey.class).list();
    }

    List<EnvelopeCase> ofPerson(ElectionId electionId, String personId) {
        return jdbc.sql("select * from envelope_case where election_id = ? and person_id = ? order by envelope_no")
                .params(electionId, personId)
                .query(EnvelopeCase.class)
                .list();
    }

    /** The cases of several persons, by person, each in the order of envelope numbers. */
    public Map<String, List<EnvelopeCase>> ofPersons(ElectionId electionId, Collection<String> personIds) {
        Map<String, List<EnvelopeCase>> found = new HashMap<>();
        jdbc.sql("""
                        select c.* from unnest(cast(? as varchar array)) as wanted (id)
                        join envelope_case c on c.election_id = ? and c.person_id = wanted.id
                        order by c.envelope_no""")
                .param(personIds.toArray(String[]::new))
                .param(electionId)
                .query(EnvelopeCase.class)
                .list()
                .forEach(envelopeCase -> found.computeIfAbsent(
                                Objects.requireNonNull(envelopeCase.personId(), "it was found by its person"),
                                any -> new ArrayList<>())
                        .add(envelopeCase));
        return found;
    }

    public void open(Collection<EnvelopeKey> keys, CaseState state) {
        OffsetDateTime now = now();
        batches.batchUpdate("""
                insert into envelope_case (election_id, envelope_no, state, changed_at, version)
                values (?, ?, ?, ?, 0)""", keys, BATCH, (row, key) -> {
            row.setString(1, key.electionId().value());
            row.setString(2, key.envelopeNo().value());
            row.setString(3, state.code());
            row.setObject(4, now);
        });
    }

    /** Writes the case as it is now over the version it was read in, and gives it with its new version. */
    public EnvelopeCase save(EnvelopeCase changed) {
        return save(List.of(changed)).get(0);
    }

    /** The same of several cases, all or none. */
    public List<EnvelopeCase> save(List<EnvelopeCase> changed) {
        OffsetDateTime now = now();
        int[][] written = batches.batchUpdate("""
                update envelope_case set state = ?, person_id = ?, counted_person = ?, taken_by = ?, taken_at = ?,
                    changed_at = ?, version = version + 1
                where election_id = ? and envelope_no = ? and version = ?""", changed, BATCH, (row, envelopeCase) -> {
            row.setString(1, envelopeCase.state().code());
            row.setString(2, envelopeCase.personId());
            row.setString(3, envelopeCase.countedPerson());
            row.setString(4, Key.text(envelopeCase.takenBy()));
            row.setObject(5, envelopeCase.takenBy() == null ? null : now);
            row.setObject(6, now);
            row.setString(7, envelopeCase.key().electionId().value());
            row.setString(8, envelopeCase.key().envelopeNo().value());
            row.setInt(9, envelopeCase.version());
        });
        List<Integer> rows =
                Arrays.stream(written).flatMapToInt(Arrays::stream).boxed().toList();
        List<EnvelopeCase> saved = new ArrayList<>();
        for (EnvelopeCase envelopeCase : changed) {
            if (rows.get(saved.size()) == 0) {
                throw new OptimisticLockingFailureException(
                        "The case " + envelopeCase.key().envelopeNo() + " was changed meanwhile.");
            }
            saved.add(new EnvelopeCase(
                    envelopeCase.key(),
                    envelopeCase.state(),
                    envelopeCase.personId(),
                    envelopeCase.countedPerson(),
                    envelopeCase.takenBy(),
                    envelopeCase.version() + 1));
        }
        return saved;
    }

    private OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
