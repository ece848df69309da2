package org.proviso.review.ends;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of receipts from other counties, and the envelopes that are sent on. */
@Repository
public class CountyReceiptStore {

    /** A receipt as its row has it. */
    private record Row(
            EnvelopeKey key,
            int number,
            LocalDate receivedOn,
            String receivedBy,
            String countyReference,
            UserName by,
            Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    CountyReceiptStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    void insert(RecordCountyReceipt command, LocalDate receivedOn, UserName by) {
        EnvelopeKey key = command.key();
        int number = jdbc.sql("""
                        select coalesce(max(receipt_no), 0) + 1 from county_receipt
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into county_receipt (election_id, envelope_no, receipt_no, received_on, received_by,
                            county_reference, recorded_by, recorded_at)
                        values (:key.electionId, :key.envelopeNo, :number, :receivedOn, :receivedBy, :countyReference,
                            :by, :at)""")
                .paramSource(new Row(
                        key,
                        number,
                        receivedOn,
                        command.receivedBy().strip(),
                        command.countyReference().strip(),
                        by,
                        clock.instant()))
                .update();
    }

    /** The receipt for an envelope that is still sent on. */
    public Optional<CountyReceipt> standing(EnvelopeKey key) {
        return jdbc.sql("""
                        select r.election_id, r.envelope_no, r.receipt_no as number, r.received_on, r.received_by,
                            r.county_reference
                        from county_receipt r where r.election_id = ? and r.envelope_no = ? and r.set_aside_at is null
                        order by r.receipt_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query(CountyReceipt.class)
                .optional();
    }

    /** The envelope is not sent on any more: a receipt for it holds no longer. */
    public void setAside(EnvelopeKey key) {
        jdbc.sql("""
                        update county_receipt set set_aside_at = ?
                        where election_id = ? and envelope_no = ? and set_aside_at is null""")
                .params(clock.instant(), key.electionId(), key.envelopeNo())
                .update();
    }

    /** Every envelope that is sent on, by its number. */
    List<SentOnEnvelope> sentOn(ElectionId electionId) {
        return jdbc.sql("""
                        select c.election_id, c.envelope_no, coalesce(p.to_county, '') as to_county,
                            p.read_at as sent_at, r.received_on, coalesce(r.received_by, '') as received_by,
                            coalesce(r.county_reference, '') as county_reference
                        from envelope_case c
                        left join end_proposal p on p.election_id = c.election_id and p.envelope_no = c.envelope_no
                            and p.state = 'agreed' and p.proposal_no = (select max(n.proposal_no) from end_proposal n
                                where n.election_id = c.election_id and n.envelope_no = c.envelope_no)
                        left join county_receipt r on r.election_id = c.election_id and r.envelope_no = c.envelope_no
                            and r.set_aside_at is null
                        where c.election_id = ? and c.state = 'sent_on' order by c.envelope_no""").param(electionId).query(SentOnEnvelope.class).list();
    }
}
