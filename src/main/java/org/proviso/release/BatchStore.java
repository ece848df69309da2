package org.proviso.release;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of batches, and of the word that the other ballots are done. */
@Repository
class BatchStore {

    private static final String SELECT =
            "select b.*, b.batch_no as number, b.empty_envelopes as empty from release_batch b where b.election_id = ?";

    private final JdbcClient jdbc;
    private final Clock clock;

    BatchStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    int insert(ElectionId electionId, boolean heldApart, Collection<EnvelopeNumber> envelopeNos, String aloneBecause) {
        int number = jdbc.sql("select coalesce(max(batch_no), 0) + 1 from release_batch where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into release_batch (election_id, batch_no, held_apart, envelopes, made_at, alone_because,
                            version)
                        values (?, ?, ?, ?, ?, ?, 0)""")
                .params(electionId, number, heldApart, envelopeNos.size(), now(), aloneBecause)
                .update();
        for (EnvelopeNumber envelopeNo : envelopeNos) {
            jdbc.sql("insert into batch_envelope (election_id, batch_no, envelope_no) values (?, ?, ?)")
                    .params(electionId, number, envelopeNo)
                    .update();
        }
        return number;
    }

    Set<EnvelopeNumber> inBatches(ElectionId electionId) {
        return new HashSet<>(jdbc.sql("select envelope_no from batch_envelope where election_id = ?")
                .param(electionId)
                .query(EnvelopeNumber.class)
                .list());
    }

    List<EnvelopeNumber> envelopes(ElectionId electionId, int batchNo) {
        return jdbc.sql("""
                        select envelope_no from batch_envelope where election_id = ? and batch_no = ?
                        order by envelope_no""")
                .params(electionId, batchNo)
                .query(EnvelopeNumber.class)
                .list();
    }

    List<Batch> all(ElectionId electionId) {
        return jdbc.sql(SELECT + " order by b.batch_no")
                .param(electionId)
                .query(Batch.class)
                .list();
    }

    /** One batch; {@link IllegalArgumentException} where there is none. */
    Batch known(ElectionId electionId, int batchNo) {
        return jdbc.sql(SELECT + " and b.batch_no = ?")
                .params(electionId, batchNo)
                .query(Batch.class)
                .optional()
                .orElseThrow(() -> new IllegalArgumentException("There is no batch " + batchNo + "."));
    }

    void beginOpening(Batch batch, UserName by) {
        changed(jdbc.sql("""
                        update release_batch set first_opener = ?, version = version + 1
                        where election_id = ? and batch_no = ? and version = ?""")
                .params(by, batch.electionId(), batch.number(), batch.version())
                .update());
    }

    void opened(Batch batch, UserName by, int empty) {
        changed(jdbc.sql("""
                        update release_batch set second_opener = ?, opened_at = ?, empty_envelopes = ?,
                            version = version + 1
                        where election_id = ? and batch_no = ? and version = ?""")
                .params(by, now(), empty, batch.electionId(), batch.number(), batch.version())
                .update());
    }

    void handedOff(Batch batch) {
        changed(jdbc.sql("""
                        update release_batch set handed_off_at = ?, version = version + 1
                        where election_id = ? and batch_no = ? and version = ?""")
                .params(now(), batch.electionId(), batch.number(), batch.version())
                .update());
    }

    /** The batch, still closed, that has this envelope. */
    Optional<Batch> closedWith(EnvelopeKey key) {
        return jdbc.sql(SELECT + "\n" + """
                         and b.opened_at is null and b.batch_no = (
                            select e.batch_no from batch_envelope e where e.election_id = ? and e.envelope_no = ?)""")
                .params(key.electionId(), key.electionId(), key.envelopeNo())
                .query(Batch.class)
                .optional();
    }

    /** Envelopes leave a batch; the sheets that count them are the caller's to renew. */
    void takeOut(Batch batch, Collection<EnvelopeNumber> envelopeNos, UserName by, String because) {
        changed(jdbc.sql("""
                        update release_batch set envelopes = envelopes - ?, version = version + 1
                        where election_id = ? and batch_no = ? and version = ?""")
                .params(envelopeNos.size(), batch.electionId(), batch.number(), batch.version())
                .update());
        for (EnvelopeNumber envelopeNo : envelopeNos) {
            jdbc.sql("delete from batch_envelope where election_id = ? and batch_no = ? and envelope_no = ?")
                    .params(batch.electionId(), batch.number(), envelopeNo)
                    .update();
            jdbc.sql("""
                            insert into batch_removal (election_id, batch_no, envelope_no, taken_out_by, taken_out_at,
                                because) values (?, ?, ?, ?, ?, ?)""")
                    .params(batch.electionId(), batch.number(), envelopeNo, by, now(), because)
                    .update();
        }
    }

    void askToDissolve(Batch batch, UserName by, String because) {
        askedToDissolve(batch, by, because);
    }

    /** Nobody asks any more that it be dissolved. */
    void keep(Batch batch) {
        askedToDissolve(batch, null, "");
    }

    private void askedToDissolve(Batch batch, @Nullable UserName by, String because) {
        changed(jdbc.sql("""
                        update release_batch set dissolve_asked_by = ?, dissolve_because = ?, version = version + 1
                        where election_id = ? and batch_no = ? and version = ?""")
                .params(by, because, batch.electionId(), batch.number(), batch.version())
                .update());
    }

    void dissolved(Batch batch, UserName by) {
        changed(jdbc.sql("""
                        update release_batch set dissolved_by = ?, dissolved_at = ?, version = version + 1
                        where election_id = ? and batch_no = ? and version = ?""")
                .params(by, now(), batch.electionId(), batch.number(), batch.version())
                .update());
    }

    private static void changed(int rows) {
        if (rows == 0) {
            throw new OptimisticLockingFailureException("The batch was changed meanwhile.");
        }
    }

    private OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
