package org.proviso.intake;

import java.security.SecureRandom;
import java.sql.ResultSet;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.chain.Salt;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of envelopes: how they were cast, shown, signed and received. What the voter wrote is another's. */
@Repository
public class EnvelopeStore {

    private static final int SALT_BYTES = 16;

    private static final String SELECT = """
            select e.*, e.precinct_cast as precinct, e.style_cast as ballot_style, e.party_ballot_cast as party_ballot,
                e.cast_at as at
            """;

    /** An envelope as it comes in, with its place among those of its election. */
    private record Received(
            ElectionId electionId,
            int place,
            Envelope envelope,
            String receiptText,
            String receiptCompared,
            String issueReasons,
            Instant recordedAt,
            String salt) {}

    /** What was seen of an envelope, over what stood there in that version. */
    private record Change(ElectionId electionId, EnvelopeNumber envelopeNo, int version, Envelope.Handling seen) {}

    /** An envelope without what the voter wrote. */
    private record Seen(
            EnvelopeNumber envelopeNo,
            @Nullable ReceiptNumber receiptNo,
            Envelope.Source source,
            Envelope.Cast cast,
            Envelope.Handling handling) {

        Envelope with(Map<EnvelopeNumber, Envelope.Affirmation> affirmations) {
            return new Envelope(
                    envelopeNo,
                    receiptNo,
                    source,
                    cast,
                    Objects.requireNonNull(affirmations.get(envelopeNo), "every envelope has its affirmation"),
                    handling);
        }
    }

    private final NamedParameterJdbcOperations batches;
    private final JdbcClient single;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    EnvelopeStore(NamedParameterJdbcOperations batches, JdbcClient single, Clock clock) {
        this.batches = batches;
        this.single = single;
        this.clock = clock;
    }

    void insert(ElectionId electionId, List<Envelope> envelopes) {
        insert(electionId, 0, envelopes);
    }

    /** Behind those that are there. */
    void append(ElectionId electionId, List<Envelope> envelopes) {
        insert(electionId, lastPlace(electionId), envelopes);
    }

    private int lastPlace(ElectionId electionId) {
        return single.sql("select coalesce(max(place), 0) from envelope where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
    }

    private void insert(ElectionId electionId, int placesBefore, List<Envelope> envelopes) {
        Instant now = clock.instant();
        List<Received> rows = new ArrayList<>();
        for (Envelope envelope : envelopes) {
            String issueReasons = CodeColumn.joined(envelope.cast().issueReasons());
            String receiptText = ReceiptNumber.text(envelope.receiptNo());
            String receiptCompared = ReceiptStore.compared(envelope.receiptNo());
            int place = placesBefore + rows.size() + 1;
            rows.add(new Received(
                    electionId, place, envelope, receiptText, receiptCompared, issueReasons, now, freshSalt()));
        }
        batches.batchUpdate("""
                insert into envelope (election_id, envelope_no, receipt_no, receipt_compared, place, source,
                    voting_location, precinct_cast, style_cast, party_ballot_cast, cast_at, extended_hours, in_line_at_close,
                    issue_reasons, id_shown, id_kind, declaration, mail_ballot_surrendered, sent_here_by_official,
                    official_note, voter_signed, mark_witness, official_signed, condition, signature_image,
                    recorded_at, ledger_salt, version)
                values (:electionId, :envelope.envelopeNo, :receiptText, :receiptCompared, :place,
                    :envelope.source, :envelope.cast.votingLocation, :envelope.cast.precinct, :envelope.cast.ballotStyle,
                    :envelope.cast.partyBallot, :envelope.cast.at, :envelope.cast.extendedHours,
                    :envelope.cast.inLineAtClose, :issueReasons, :envelope.handling.idShown,
                    :envelope.handling.idKind, :envelope.handling.declaration,
                    :envelope.handling.mailBallotSurrendered, :envelope.handling.sentHereByOfficial,
                    :envelope.handling.officialNote, :envelope.handling.voterSigned, :envelope.handling.markWitness,
                    :envelope.handling.officialSigned, :envelope.handling.condition,
                    :envelope.handling.signatureImage, :recordedAt, :salt, 0)""", SqlParameterSourceUtils.createBatch(rows));
    }

    private String freshSalt() {
        byte[] bytes = new byte[SALT_BYTES];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    List<CastEnvelope> cast(ElectionId electionId) {
        return single.sql("""
                        select envelope_no, source, voting_location, extended_hours = 'yes' as in_extended_hours,
                            issue_reasons
                        from envelope
                        where election_id = ? order by place""").param(electionId).query(CastEnvelope.class).list();
    }

    List<Envelope> all(ElectionId electionId, Map<EnvelopeNumber, Envelope.Affirmation> affirmations) {
        return single
                .sql(SELECT + "from envelope e where e.election_id = ? order by e.place")
                .param(electionId)
                .query(Seen.class)
                .list()
                .stream()
                .map(seen -> seen.with(affirmations))
                .toList();
    }

    /** The envelopes that these affirmations are of; there is at least one. */
    List<Envelope> find(ElectionId electionId, Map<EnvelopeNumber, Envelope.Affirmation> affirmations) {
        return single
                .sql(SELECT + """
                        from unnest(cast(? as varchar array)) as wanted (id)
                        join envelope e on e.election_id = ? and e.envelope_no = wanted.id order by e.place""")
                .param(affirmations.keySet().stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query(Seen.class)
                .list()
                .stream()
                .map(seen -> seen.with(affirmations))
                .toList();
    }

    /**
     * Adds one envelope after those that came before, with the stamp of its arrival, and the envelope that has the
     * number printed on it already, if there is one.
     */
    void add(
            ElectionId electionId, Envelope envelope, LocalDateTime receivedAt, @Nullable EnvelopeNumber numberAlsoOn) {
        append(electionId, List.of(envelope));
        single.sql("""
                        update envelope set received_at = ?, number_also_on = ?
                        where election_id = ? and envelope_no = ?""")
                .params(receivedAt, Key.text(numberAlsoOn), electionId, envelope.envelopeNo())
                .update();
    }

    /** Writes what was shown and signed, and the condition, over what stood there in that version. */
    public void change(ElectionId electionId, EnvelopeNumber envelopeNo, int version, Envelope.Handling seen) {
        int changed = single.sql("""
                        update envelope set id_shown = :seen.idShown, id_kind = :seen.idKind,
                            declaration = :seen.declaration, mail_ballot_surrendered = :seen.mailBallotSurrendered,
                            sent_here_by_official = :seen.sentHereByOfficial, official_note = :seen.officialNote,
                            voter_signed = :seen.voterSigned, mark_witness = :seen.markWitness,
                            official_signed = :seen.officialSigned, condition = :seen.condition, version = version + 1
                        where election_id = :electionId and envelope_no = :envelopeNo and version = :version""")
                .paramSource(new Change(electionId, envelopeNo, version, seen))
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException(
                    "The envelope " + envelopeNo + " was changed by somebody else since you opened it.");
        }
    }

    public int version(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return single.sql("select version from envelope where election_id = ? and envelope_no = ?")
                .params(electionId, envelopeNo)
                .query(Integer.class)
                .single();
    }

    /** The voting locations of the envelopes here, and of the transmittals. */
    public List<String> votingLocations(ElectionId electionId) {
        return single.sql("""
                        select voting_location from envelope where election_id = ?
                        union select voting_location from transmittal where election_id = ?""")
                .params(electionId, electionId)
                .query(String.class)
                .list();
    }

    /** The envelopes with a box that is not yet keyed, in their order. */
    public List<EnvelopeNumber> notYetKeyed(ElectionId electionId) {
        return single.sql("""
                        select e.envelope_no from envelope e
                        where e.election_id = ? and exists (
                            select 1 from affirmation_field f
                            where f.election_id = e.election_id and f.envelope_no = e.envelope_no
                              and f.state = 'not_yet_keyed')
                        order by e.place""").param(electionId).query(EnvelopeNumber.class).list();
    }

    /** Those of these numbers that envelopes have. */
    Set<EnvelopeNumber> known(ElectionId electionId, Set<EnvelopeNumber> numbers) {
        return numbers.isEmpty()
                ? Set.of()
                : Set.copyOf(single.sql(
                                "select envelope_no from envelope where election_id = :id and envelope_no in (:numbers)")
                        .param("id", electionId)
                        .param("numbers", numbers)
                        .query(EnvelopeNumber.class)
                        .list());
    }

    /** Holds the envelope for this transaction, so that two people cannot add to it at once; false if there is none. */
    boolean lock(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return single.sql("select envelope_no from envelope where election_id = ? and envelope_no = ? for update")
                .params(electionId, envelopeNo)
                .query(String.class)
                .optional()
                .isPresent();
    }

    Optional<Salt> salt(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return single.sql("""
                        select ledger_salt from envelope
                        where election_id = ? and envelope_no = ? and ledger_salt is not null""")
                .params(electionId, envelopeNo)
                .query(String.class)
                .optional()
                .map(Salt::new);
    }

    /** The salts of several envelopes, by envelope number. */
    Map<EnvelopeNumber, Salt> salts(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, Salt> salts = new HashMap<>();
        single.sql("""
                        select e.envelope_no, e.ledger_salt from unnest(cast(? as varchar array)) as wanted (id)
                        join envelope e on e.election_id = ? and e.envelope_no = wanted.id
                        where e.ledger_salt is not null""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query((ResultSet row) -> {
                    salts.put(new EnvelopeNumber(row.getString("envelope_no")), new Salt(row.getString("ledger_salt")));
                });
        return salts;
    }
}
