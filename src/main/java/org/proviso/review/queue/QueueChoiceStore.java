package org.proviso.review.queue;

import java.util.List;
import java.util.Locale;
import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which values the columns of a list have in an election. */
@Repository
class QueueChoiceStore {

    private final JdbcClient jdbc;

    QueueChoiceStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<QueueChoice> locations(ElectionId electionId, String typed, int offset, int limit) {
        return values("voting_location", "envelope", electionId, typed, offset, limit);
    }

    List<QueueChoice> precincts(ElectionId electionId, String typed, int offset, int limit) {
        return values("precinct_cast", "envelope", electionId, typed, offset, limit);
    }

    List<QueueChoice> languages(ElectionId electionId) {
        return values("language", "affirmation", electionId, "", 0, 100);
    }

    /** The reasons of envelopes as their column has them, each with all of one envelope. */
    List<String> reasons(ElectionId electionId) {
        return jdbc.sql("select distinct issue_reasons from envelope where election_id = ? order by issue_reasons")
                .param(electionId)
                .query(String.class)
                .list();
    }

    List<QueueChoice> holders(ElectionId electionId) {
        return jdbc.sql("""
                        select u.user_name as "value", u.full_name as words from office_user u
                        where u.user_name in (select c.taken_by from envelope_case c
                            where c.election_id = ? and c.state = 'in_review')
                        order by u.full_name""").param(electionId).query(QueueChoice.class).list();
    }

    private List<QueueChoice> values(
            String column, String table, ElectionId electionId, String typed, int offset, int limit) {
        String sql = "select distinct %1$s as \"value\", %1$s as words from %2$s".formatted(column, table)
                + """

                 where election_id = :election and %1$s <> '' and lower(%1$s) like :typed
                 order by %1$s limit :limit offset :offset""".formatted(column);
        return jdbc.sql(sql)
                .param("election", electionId)
                .param("typed", "%" + typed.toLowerCase(Locale.ROOT).replaceAll("[%_\\\\]", "") + "%")
                .param("limit", limit)
                .param("offset", offset)
                .query(QueueChoice.class)
                .list();
    }
}
