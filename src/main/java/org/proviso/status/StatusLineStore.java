package org.proviso.status;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what voters read of their own envelopes. */
@Repository
class StatusLineStore {

    private static final String SEPARATOR = ";";
    private static final String UNTIL = "=";

    /** A line with its lists as their columns have them. */
    private record Row(StatusLine line, String reasons, String asks) {}

    /** A line with what the voter may still bring as its column has it. */
    private record Stored(
            String keyHash,
            String envelopeHash,
            String receiptHash,
            ElectionId electionId,
            VoterCaseState state,
            List<Reason> reasons,
            List<String> asks,
            Arrival arrival,
            boolean registrationFound,
            Instant changedAt) {

        StatusLine line() {
            List<VoterAsk> open = asks.stream().map(StatusLineStore::ask).toList();
            return new StatusLine(
                    keyHash,
                    envelopeHash,
                    receiptHash,
                    electionId,
                    state,
                    reasons,
                    open,
                    arrival,
                    registrationFound,
                    changedAt);
        }
    }

    private final JdbcClient jdbc;

    StatusLineStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * The line of that hash, unless it may be another voter's: where a second envelope has the receipt number, the birth
     * dates of both are known, and they differ.
     *
     * @param undated the hash under which that receipt number has envelopes without a known birth date
     */
    Optional<StatusLine> find(String keyHash, String undated) {
        return jdbc.sql("""
                        select l.* from status_line l where l.key_hash = :key and not exists (
                            select 1 from status_line o where o.receipt_hash = l.receipt_hash
                                and o.envelope_hash <> l.envelope_hash and o.key_hash in (:key, :undated))""")
                .param("key", keyHash)
                .param("undated", undated)
                .query(Stored.class)
                .optional()
                .map(Stored::line);
    }

    /** The lines of an envelope; those of before are under the hash of its receipt number. */
    List<StatusLine> of(String envelopeHash, String ofBefore) {
        return jdbc
                .sql("select * from status_line where envelope_hash in (?, ?) order by key_hash")
                .params(envelopeHash, ofBefore)
                .query(Stored.class)
                .list()
                .stream()
                .map(Stored::line)
                .toList();
    }

    List<StatusLine> all(ElectionId electionId) {
        return jdbc
                .sql("select * from status_line where election_id = ? order by key_hash, envelope_hash")
                .param(electionId)
                .query(Stored.class)
                .list()
                .stream()
                .map(Stored::line)
                .toList();
    }

    void remove(String envelopeHash, String ofBefore) {
        jdbc.sql("delete from status_line where envelope_hash in (?, ?)")
                .params(envelopeHash, ofBefore)
                .update();
    }

    void empty(ElectionId electionId) {
        jdbc.sql("delete from status_line where election_id = ?")
                .param(electionId)
                .update();
    }

    void insert(StatusLine line) {
        jdbc.sql("""
                        insert into status_line (key_hash, envelope_hash, receipt_hash, election_id, state, reasons,
                            asks, source, voting_location, cast_on, sealed, registration_found, changed_at)
                        values (:line.keyHash, :line.envelopeHash, :line.receiptHash, :line.electionId, :line.state,
                            :reasons, :asks, :line.arrival.source, :line.arrival.votingLocation,
                            :line.arrival.castOn, :line.arrival.sealed, :line.registrationFound, :line.changedAt)""")
                .paramSource(new Row(
                        line,
                        joined(line.reasons()),
                        line.asks().stream().map(StatusLineStore::text).collect(Collectors.joining(SEPARATOR))))
                .update();
    }

    void changedAt(StatusLine line, Instant moment) {
        jdbc.sql("update status_line set changed_at = ? where key_hash = ? and envelope_hash = ?")
                .params(moment, line.keyHash(), line.envelopeHash())
                .update();
    }

    private static String joined(Collection<? extends Code> codes) {
        return codes.stream().map(Code::code).collect(Collectors.joining(SEPARATOR));
    }

    /** A code, and behind it the deadline where there is one. */
    private static String text(VoterAsk ask) {
        return ask.ask().code() + (ask.until() == null ? "" : UNTIL + ask.until());
    }

    private static VoterAsk ask(String text) {
        String[] sides = text.split(UNTIL, 0);
        return new VoterAsk(
                Code.find(Ask.class, sides[0]).orElseThrow(), sides.length == 1 ? null : LocalDateTime.parse(sides[1]));
    }
}
