package org.proviso.review;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of persons: the voter behind one or more envelopes, on the roll or not. */
@Repository
class PersonStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    PersonStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** The person of a record of the roll, entered when first needed. */
    String ofVoter(String electionId, String voterId) {
        Optional<String> known = jdbc.sql("select person_id from person where election_id = ? and voter_id = ?")
                .params(electionId, voterId)
                .query(String.class)
                .optional();
        return known.orElseGet(() -> enter(electionId, "voter:" + voterId, voterId, "on_the_roll"));
    }

    /** The person of an envelope whose voter is not on the roll. */
    String offRoll(CaseKey key, OffRoll because) {
        String personId = "envelope:" + key.envelopeNo();
        boolean known = jdbc.sql("select count(*) from person where election_id = ? and person_id = ?")
                        .params(key.electionId(), personId)
                        .query(Integer.class)
                        .single()
                > 0;
        return known ? personId : enter(key.electionId(), personId, null, because.code());
    }

    private String enter(String electionId, String personId, @Nullable String voterId, String because) {
        jdbc.sql("insert into person (election_id, person_id, voter_id, because, created_at) values (?, ?, ?, ?, ?)")
                .params(electionId, personId)
                .param(voterId)
                .param(because)
                .param(OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
        return personId;
    }
}
