package org.proviso.review.facts;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** The table of persons: the voter behind one or more envelopes, on the roll or not. */
@Repository
public class PersonStore {

    private final JdbcClient jdbc;
    private final Clock clock;
    private final TransactionTemplate tried;

    PersonStore(JdbcClient jdbc, Clock clock, PlatformTransactionManager transactions) {
        this.jdbc = jdbc;
        this.clock = clock;
        this.tried = new TransactionTemplate(transactions);
        this.tried.setPropagationBehavior(TransactionDefinition.PROPAGATION_NESTED);
    }

    /** The person of a record of the roll, entered when first needed. */
    public String ofVoter(ElectionId electionId, VoterId voterId) {
        Optional<String> known = jdbc.sql("select person_id from person where election_id = ? and voter_id = ?")
                .params(electionId, voterId)
                .query(String.class)
                .optional();
        return known.orElseGet(() -> enter(electionId, "voter:" + voterId, voterId, "on_the_roll"));
    }

    /** The person of an envelope whose voter is not on the roll. */
    public String offRoll(EnvelopeKey key, OffRollReason because) {
        String personId = "envelope:" + key.envelopeNo();
        boolean known = jdbc.sql("select count(*) from person where election_id = ? and person_id = ?")
                        .params(key.electionId(), personId)
                        .query(Integer.class)
                        .single()
                > 0;
        return known ? personId : enter(key.electionId(), personId, null, because.code());
    }

    private String enter(ElectionId electionId, String personId, @Nullable VoterId voterId, String because) {
        try {
            tried.executeWithoutResult(attempt -> insert(electionId, personId, voterId, because));
        } catch (DuplicateKeyException e) {
            // Somebody settled another envelope of the same voter at this very moment: the person is there.
            return personId;
        }
        return personId;
    }

    private void insert(ElectionId electionId, String personId, @Nullable VoterId voterId, String because) {
        jdbc.sql("insert into person (election_id, person_id, voter_id, because, created_at) values (?, ?, ?, ?, ?)")
                .params(electionId, personId)
                .param(voterId)
                .param(because)
                .param(OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }
}
