package org.proviso.intake.keying;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.files.ledger.LedgerJsonReader;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what people are keying or have keyed, one row a person and envelope. */
@Repository
class KeyingDraftStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    KeyingDraftStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    Optional<KeyingDraft> find(ElectionId electionId, EnvelopeNumber envelopeNo, UserName userName) {
        return jdbc.sql("""
                        select * from affirmation_draft
                        where election_id = ? and envelope_no = ? and user_name = ?""")
                .params(electionId, envelopeNo, userName)
                .query(KeyingDraftStore::draft)
                .optional();
    }

    /** Writes over the own draft of that version, 0 for none yet, and gives the new version. */
    int save(ElectionId electionId, UserName userName, KeyingDraft draft) {
        if (draft.version() == 0) {
            insert(electionId, userName, draft);
        } else {
            update(electionId, userName, draft);
        }
        return draft.version() + 1;
    }

    /** Notes in how many boxes the own draft, handed in a second time, reads otherwise; the draft stays as it is. */
    void noteDiffering(ElectionId electionId, EnvelopeNumber envelopeNo, UserName userName, int boxes) {
        jdbc.sql("""
                        update affirmation_draft set differing = ?
                        where election_id = ? and envelope_no = ? and user_name = ?""").params(boxes, electionId, envelopeNo, userName).update();
    }

    private void insert(ElectionId electionId, UserName userName, KeyingDraft draft) {
        try {
            jdbc.sql("""
                            insert into affirmation_draft (election_id, envelope_no, user_name, keyed, finished,
                                saved_at, version)
                            values (?, ?, ?, ?, ?, ?, 1)""")
                    .params(
                            electionId,
                            draft.envelopeNo(),
                            userName,
                            CanonicalJson.of(draft.boxes()),
                            draft.finished(),
                            now())
                    .update();
        } catch (DuplicateKeyException e) {
            throw stale(draft);
        }
    }

    private void update(ElectionId electionId, UserName userName, KeyingDraft draft) {
        int saved = jdbc.sql("""
                        update affirmation_draft set keyed = ?, finished = ?, saved_at = ?, version = version + 1
                        where election_id = ? and envelope_no = ? and user_name = ? and version = ?""")
                .params(
                        CanonicalJson.of(draft.boxes()),
                        draft.finished(),
                        now(),
                        electionId,
                        draft.envelopeNo(),
                        userName,
                        draft.version())
                .update();
        if (saved == 0) {
            throw stale(draft);
        }
    }

    private static OptimisticLockingFailureException stale(KeyingDraft draft) {
        return new OptimisticLockingFailureException("Your draft of " + draft.envelopeNo()
                + " was saved from another page since: open the envelope again to go on from there.");
    }

    private OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    private static KeyingDraft draft(ResultSet row, int number) throws SQLException {
        try {
            Map<String, String> boxes = new LinkedHashMap<>();
            LedgerJsonReader.object(row.getString("keyed")).forEach((box, text) -> boxes.put(box, text.toString()));
            return new KeyingDraft(
                    new EnvelopeNumber(row.getString("envelope_no")),
                    boxes,
                    row.getBoolean("finished"),
                    row.getInt("version"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
