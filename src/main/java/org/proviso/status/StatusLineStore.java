package org.proviso.status;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope.Source;
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

    private final JdbcClient jdbc;

    StatusLineStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<StatusLine> find(String keyHash) {
        return jdbc.sql("select * from status_line where key_hash = ?")
                .param(keyHash)
                .query(StatusLineStore::row)
                .optional();
    }

    List<StatusLine> ofReceipt(String receiptHash) {
        return jdbc.sql("select * from status_line where receipt_hash = ? order by key_hash")
                .param(receiptHash)
                .query(StatusLineStore::row)
                .list();
    }

    List<StatusLine> all(ElectionId electionId) {
        return jdbc.sql("select * from status_line where election_id = ? order by key_hash")
                .param(electionId)
                .query(StatusLineStore::row)
                .list();
    }

    void removeReceipt(String receiptHash) {
        jdbc.sql("delete from status_line where receipt_hash = ?")
                .param(receiptHash)
                .update();
    }

    void empty(ElectionId electionId) {
        jdbc.sql("delete from status_line where election_id = ?")
                .param(electionId)
                .update();
    }

    void insert(StatusLine line) {
        jdbc.sql("""
                        insert into status_line (key_hash, receipt_hash, election_id, state, reasons, asks, source,
                            voting_location, cast_on, sealed, registration_found, changed_at)
                        values (:line.keyHash, :line.receiptHash, :line.electionId, :line.state, :reasons, :asks,
                            :line.arrival.source, :line.arrival.votingLocation, :line.arrival.castOn,
                            :line.arrival.sealed, :line.registrationFound, :line.changedAt)""")
                .paramSource(new Row(
                        line,
                        joined(line.reasons()),
                        line.asks().stream().map(StatusLineStore::text).collect(Collectors.joining(SEPARATOR))))
                .update();
    }

    void changedAt(String keyHash, Instant moment) {
        jdbc.sql("update status_line set changed_at = ? where key_hash = ?")
                .params(moment, keyHash)
                .update();
    }

    private static String joined(Collection<? extends Code> codes) {
        return codes.stream().map(Code::code).collect(Collectors.joining(SEPARATOR));
    }

    private static <E extends Enum<E> & Code> List<E> codes(String joined, Class<E> type) {
        return words(joined).map(word -> Code.find(type, word).orElseThrow()).toList();
    }

    private static Stream<String> words(String joined) {
        return Arrays.stream(joined.split(SEPARATOR)).filter(word -> !word.isEmpty());
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

    private static @Nullable Source source(@Nullable String code) {
        return code == null ? null : Code.find(Source.class, code).orElseThrow();
    }

    private static StatusLine row(ResultSet row, int number) throws SQLException {
        return new StatusLine(
                row.getString("key_hash"),
                row.getString("receipt_hash"),
                new ElectionId(row.getString("election_id")),
                Code.find(VoterCaseState.class, row.getString("state")).orElseThrow(),
                codes(row.getString("reasons"), Reason.class),
                words(row.getString("asks")).map(StatusLineStore::ask).toList(),
                new Arrival(
                        source(row.getString("source")),
                        row.getString("voting_location"),
                        row.getObject("cast_on", LocalDate.class),
                        row.getBoolean("sealed")),
                row.getBoolean("registration_found"),
                row.getObject("changed_at", OffsetDateTime.class).toInstant());
    }
}
