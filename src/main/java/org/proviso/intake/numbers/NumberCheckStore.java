package org.proviso.intake.numbers;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which envelopes have a number that is missing or on others, and the table of what people settled about it. */
@Repository
class NumberCheckStore {

    static final String CONFIRMED = "confirmed";
    static final String CORRECTED = "corrected";

    /** An envelope beside another one that has the same number. */
    record Pair(EnvelopeNumber envelopeNo, EnvelopeKey other) {}

    /** What a list shows of an envelope. */
    record Line(EnvelopeNumber envelopeNo, @Nullable ReceiptNumber receiptNo, String votingLocation, int version) {}

    /** What a person settled; the envelopes that had the number then, as their group is written. */
    record Settled(
            EnvelopeNumber envelopeNo,
            int number,
            NumberMark mark,
            String settled,
            String envelopes,
            String because,
            UserName settledBy) {}

    /** The same with the election and the moment. */
    private record Row(ElectionId electionId, Settled settled, Instant now) {}

    private final JdbcClient jdbc;

    NumberCheckStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<EnvelopeNumber> withoutReceipt(ElectionId electionId) {
        return jdbc.sql("""
                        select envelope_no from envelope where election_id = ? and receipt_compared = ''
                        order by place""").param(electionId).query(EnvelopeNumber.class).list();
    }

    /** Of envelopes in another election only those that came in before: the later one is to be looked at. */
    List<Pair> sharedReceipts(ElectionId electionId) {
        return jdbc.sql("""
                        select e.envelope_no, o.election_id as other_election, o.envelope_no as other_no
                        from envelope e join envelope o on o.receipt_compared = e.receipt_compared
                        where e.election_id = ? and e.receipt_compared <> ''
                            and (o.election_id = e.election_id and o.envelope_no <> e.envelope_no
                                or o.election_id <> e.election_id and o.recorded_at < e.recorded_at)
                        order by e.place, o.recorded_at, o.place""")
                .param(electionId)
                .query((row, number) -> new Pair(
                        new EnvelopeNumber(row.getString("envelope_no")),
                        new EnvelopeKey(
                                new ElectionId(row.getString("other_election")),
                                new EnvelopeNumber(row.getString("other_no")))))
                .list();
    }

    /** The envelopes received under a number made distinct, each beside the one whose number is printed on it. */
    List<Pair> numbersMadeDistinct(ElectionId electionId) {
        return jdbc.sql("""
                        select envelope_no, number_also_on from envelope
                        where election_id = ? and number_also_on is not null order by place""")
                .param(electionId)
                .query((row, number) -> new Pair(
                        new EnvelopeNumber(row.getString("envelope_no")),
                        new EnvelopeKey(electionId, new EnvelopeNumber(row.getString("number_also_on")))))
                .list();
    }

    List<Line> lines(ElectionId electionId, List<EnvelopeNumber> numbers) {
        return numbers.isEmpty()
                ? List.of()
                : jdbc.sql("""
                                select envelope_no, receipt_no, voting_location, version
                                from envelope where election_id = :id and envelope_no in (:numbers) order by place""")
                        .param("id", electionId)
                        .param("numbers", numbers)
                        .query(Line.class)
                        .list();
    }

    /** Everything that people settled, each envelope's in its order. */
    List<Settled> settled(ElectionId electionId) {
        return jdbc.sql("""
                        select c.*, c.check_no as number from number_check c where c.election_id = ?
                        order by c.envelope_no, c.check_no""").param(electionId).query(Settled.class).list();
    }

    /** Adds what a person settled, under the next number of its envelope, whose row the caller has locked. */
    void insert(ElectionId electionId, Settled settled, Instant now) {
        jdbc.sql("""
                        insert into number_check (election_id, envelope_no, check_no, mark, settled, envelopes, because,
                            settled_by, settled_at)
                        values (:electionId, :settled.envelopeNo, :settled.number, :settled.mark, :settled.settled,
                            :settled.envelopes, :settled.because, :settled.settledBy, :now)""").paramSource(new Row(electionId, settled, now)).update();
    }

    int nextNumber(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return jdbc.sql("""
                        select coalesce(max(check_no), 0) + 1 from number_check
                        where election_id = ? and envelope_no = ?""").params(electionId, envelopeNo).query(Integer.class).single();
    }

    /** What an envelope's receipt number is now. */
    @Nullable
    ReceiptNumber receipt(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return ReceiptNumber.orNull(
                jdbc.sql("select receipt_no from envelope where election_id = ? and envelope_no = ?")
                        .params(electionId, envelopeNo)
                        .query(String.class)
                        .single());
    }
}
