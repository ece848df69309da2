package org.proviso.intake.desk;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Repository;

/** Lists over the tables of envelopes and of what people keyed, a page at a time. */
@Repository
class EnvelopeListStore {

    private static final String WAITS = """
            exists (select 1 from affirmation_field f where f.election_id = e.election_id
                and f.envelope_no = e.envelope_no and f.state = 'not_yet_keyed')""";

    /** Keyings by hand, plus one if the envelope was loaded with its keying. */
    private static final String KEYINGS = """
            ((select count(*) from affirmation_draft d where d.election_id = e.election_id
                and d.envelope_no = e.envelope_no and d.finished = true)
             + case when e.received_at is null then 1 else 0 end)""";

    private static final String DIFFERING = """
            (select coalesce(max(d.differing), 0) from affirmation_draft d where d.election_id = e.election_id
                and d.envelope_no = e.envelope_no and d.finished = false)""";

    /** Envelopes with a field that is not keyed, by that field: there are few. */
    private static final String NOT_KEYED = """
            select count(distinct f.envelope_no) from affirmation_field f
            where f.election_id = ? and f.state = 'not_yet_keyed'""";

    private static final String LINE = "select e.*, " + WAITS + " as waits, " + KEYINGS + " as keyings, " + DIFFERING
            + " as differing from envelope e where e.election_id = :election";

    private static final String FOUND = """
             and (:sought = '' or lower(e.envelope_no) like :sought escape '!'
                  or lower(e.receipt_no) like :sought escape '!')""";

    private final JdbcClient jdbc;

    EnvelopeListStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<IntakeEnvelopeRow> page(ElectionId electionId, EnvelopeFilter filter, String sought, int offset, int limit) {
        // First which ones, from the index of their places, then how each was keyed.
        String numbers = "select e.envelope_no from envelope e where e.election_id = :election and e.place >= 0"
                + condition(filter) + " " + FOUND
                + " order by e.election_id, e.place offset :offset rows fetch next :limit rows only";
        String sql = LINE + " and e.envelope_no in (" + numbers + ") order by e.place";
        return asked(sql, electionId, sought)
                .param("offset", offset)
                .param("limit", limit)
                .query(IntakeEnvelopeRow.class)
                .list();
    }

    int count(ElectionId electionId, EnvelopeFilter filter, String sought) {
        if (filter == EnvelopeFilter.NOT_KEYED && sought.isBlank()) {
            return jdbc.sql(NOT_KEYED).param(electionId).query(Integer.class).single();
        }
        String sql =
                "select count(*) from envelope e where e.election_id = :election" + condition(filter) + " " + FOUND;
        return asked(sql, electionId, sought).query(Integer.class).single();
    }

    Optional<IntakeEnvelopeRow> line(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.sql(LINE + " and e.envelope_no = :number")
                .param("election", electionId)
                .param("number", envelopeNo)
                .query(IntakeEnvelopeRow.class)
                .optional();
    }

    /** Envelopes received by hand, newest first. */
    List<IntakeEnvelopeRow> lastReceived(ElectionId electionId, int limit) {
        String sql = LINE + " and e.received_at is not null order by e.place desc fetch first :limit rows only";
        return jdbc.sql(sql)
                .param("election", electionId)
                .param("limit", limit)
                .query(IntakeEnvelopeRow.class)
                .list();
    }

    /** How many envelopes of each voting location are here. */
    Map<String, Integer> hereByLocation(ElectionId electionId) {
        Map<String, Integer> here = new java.util.TreeMap<>();
        jdbc.sql(
                        "select voting_location, count(*) as here from envelope where election_id = ? group by voting_location")
                .param(electionId)
                .query(row -> {
                    here.put(row.getString("voting_location"), row.getInt("here"));
                });
        return here;
    }

    private StatementSpec asked(String sql, ElectionId electionId, String sought) {
        String typed = sought.strip().toLowerCase(Locale.ROOT);
        String literal = typed.replace("!", "!!").replace("%", "!%").replace("_", "!_");
        return jdbc.sql(sql).param("election", electionId).param("sought", typed.isEmpty() ? "" : literal + "%");
    }

    private static String condition(EnvelopeFilter filter) {
        return switch (filter) {
            case ALL -> "";
            case NOT_KEYED -> " and " + WAITS;
            case KEYED_ONCE -> " and not " + WAITS + " and " + KEYINGS + " = 1";
            case DIFFERING -> " and " + DIFFERING + " > 0";
        };
    }
}
