package org.proviso.review.facts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.FactFinder;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what persons recorded of the facts of a case. */
@Repository
public class AnswerStore {

    /** An answer under its number, with its fact and words as their columns have them. */
    private record Row(
            EnvelopeKey key, int number, String question, RecordedAnswer answer, String fact, String words) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    AnswerStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Adds an answer under the next number of the case, whatever number it has. */
    public void insert(EnvelopeKey key, String question, RecordedAnswer answer) {
        jdbc.sql("""
                        insert into answer_given (election_id, envelope_no, answer_no, kind, question, fact, fact_words,
                            reason, received_at, given_by, given_at)
                        values (:key.electionId, :key.envelopeNo, :number, :answer.kind, :question, :fact, :words,
                            :answer.reason, :answer.receivedAt, :answer.by, :answer.at)""")
                .paramSource(new Row(
                        key,
                        next(key),
                        question,
                        answer,
                        answer.fact().key(),
                        answer.words().stream().map(Code::code).collect(Collectors.joining(";"))))
                .update();
    }

    /** Those that stand, in the order given. */
    public List<RecordedAnswer> standing(EnvelopeKey key) {
        return jdbc.sql("""
                        select * from answer_given where election_id = ? and envelope_no = ? and withdrawn_at is null
                        order by answer_no""")
                .params(key.electionId(), key.envelopeNo())
                .query(AnswerStore::row)
                .list();
    }

    /** The envelopes whose signature somebody found different; of some of them a second look stands too. */
    public List<EnvelopeNumber> foundDifferentByOne(ElectionId electionId) {
        return jdbc.sql("""
                        select distinct envelope_no from answer_given
                        where election_id = ? and withdrawn_at is null and fact = 'signature_comparison'
                            and fact_words = 'differs_by_one'
                        order by envelope_no""").param(electionId).query(EnvelopeNumber.class).list();
    }

    /** The same of several envelopes, by envelope number. */
    public Map<EnvelopeNumber, List<RecordedAnswer>> standing(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, List<RecordedAnswer>> found = new HashMap<>();
        jdbc.sql("""
                        select a.* from unnest(cast(? as varchar array)) as wanted (id)
                        join answer_given a on a.election_id = ? and a.envelope_no = wanted.id
                        where a.withdrawn_at is null order by a.answer_no""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query((ResultSet row) -> {
                    found.computeIfAbsent(new EnvelopeNumber(row.getString("envelope_no")), any -> new ArrayList<>())
                            .add(row(row, 0));
                });
        return found;
    }

    /** Takes back every standing answer on a fact; it stays readable. */
    public int withdraw(EnvelopeKey key, Fact<?> fact) {
        return jdbc.sql("""
                        update answer_given set withdrawn_at = ?
                        where election_id = ? and envelope_no = ? and fact = ? and withdrawn_at is null""")
                .params(clock.instant(), key.electionId(), key.envelopeNo(), fact.key())
                .update();
    }

    /** Takes back the standing answers of one kind; how many there were. */
    public int withdraw(EnvelopeKey key, AnswerKind kind) {
        return jdbc.sql("""
                        update answer_given set withdrawn_at = ?
                        where election_id = ? and envelope_no = ? and kind = ? and withdrawn_at is null""")
                .params(clock.instant(), key.electionId(), key.envelopeNo(), kind.code())
                .update();
    }

    /** Takes back every standing answer that belongs to the voter it was made about; the facts, in the order of their keys. */
    public List<Fact<?>> withdrawOfTheVoter(EnvelopeKey key) {
        List<Fact<?>> voided = standing(key).stream()
                .<Fact<?>>map(RecordedAnswer::fact)
                .filter(AnswerStore::isOfTheVoter)
                .distinct()
                .sorted(Comparator.comparing(Fact::key))
                .toList();
        voided.forEach(fact -> withdraw(key, fact));
        return voided;
    }

    /** Whether identification is asked may hang on the voter's registration too. */
    private static boolean isOfTheVoter(Fact<?> fact) {
        return FactFinder.OF_THE_VOTER.contains(fact) || fact.equals(Fact.IDENTIFICATION);
    }

    private int next(EnvelopeKey key) {
        return jdbc.sql("""
                        select coalesce(max(answer_no), 0) + 1 from answer_given
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
    }

    private static RecordedAnswer row(ResultSet row, int number) throws SQLException {
        Fact<?> fact = Fact.find(row.getString("fact")).orElseThrow();
        return new RecordedAnswer(
                row.getInt("answer_no"),
                Code.find(AnswerKind.class, row.getString("kind")).orElseThrow(),
                fact,
                words(fact, row.getString("fact_words")),
                row.getString("reason"),
                row.getObject("received_at", LocalDateTime.class),
                new UserName(row.getString("given_by")),
                row.getObject("given_at", OffsetDateTime.class).toInstant());
    }

    private static Set<FactWord> words(Fact<?> fact, String codes) {
        List<String> wanted = Arrays.asList(codes.split(";"));
        Set<FactWord> words = new LinkedHashSet<>();
        for (FactWord word : fact.words()) {
            if (wanted.contains(word.code())) {
                words.add(word);
            }
        }
        return words;
    }
}
