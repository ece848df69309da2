package org.proviso.intake.desk;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which envelope to key next, from the tables of envelopes and drafts. */
@Repository
class NextEnvelopeStore {

    private static final String NOT_HANDED_IN_BY_ME = """
             and not exists (select 1 from affirmation_draft d where d.election_id = e.election_id
                and d.envelope_no = e.envelope_no and d.user_name = :me and d.finished = true)""";

    /** No one else is keying it now. */
    private static final String FREE = """
             and not exists (select 1 from affirmation_draft d where d.election_id = e.election_id
                and d.envelope_no = e.envelope_no and d.user_name <> :me and d.finished = false
                and d.saved_at > :since)""";

    private static final String OWN_FIRST = """
             order by case when exists (select 1 from affirmation_draft d where d.election_id = e.election_id
                and d.envelope_no = e.envelope_no and d.user_name = :me and d.finished = false) then 0 else 1 end,
                e.place fetch first 1 rows only""";

    private static final String NOT_YET_KEYED = """
            (select 1 from affirmation_field f where f.election_id = e.election_id
                and f.envelope_no = e.envelope_no and f.state = 'not_yet_keyed')""";

    private final JdbcClient jdbc;

    NextEnvelopeStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<String> first(ElectionId electionId, UserName userName, OffsetDateTime since) {
        return next(" and exists " + NOT_YET_KEYED, electionId, userName, since);
    }

    Optional<String> second(ElectionId electionId, UserName userName, OffsetDateTime since) {
        String keyedOnce = " and not exists " + NOT_YET_KEYED + " " + """
                 and (select count(*) from affirmation_draft d where d.election_id = e.election_id
                    and d.envelope_no = e.envelope_no and d.finished = true)
                 + case when e.received_at is null then 1 else 0 end = 1""";
        return next(keyedOnce, electionId, userName, since);
    }

    private Optional<String> next(String which, ElectionId electionId, UserName userName, OffsetDateTime since) {
        return jdbc.sql("select e.envelope_no from envelope e where e.election_id = :election" + which + " "
                        + NOT_HANDED_IN_BY_ME + " " + FREE + " " + OWN_FIRST)
                .param("election", electionId)
                .param("me", userName)
                .param("since", since)
                .query(String.class)
                .optional();
    }
}
