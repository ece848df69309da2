package org.proviso.review.facts;

import java.sql.ResultSet;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.rules.Ask;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of when voters were told of what they may still bring. */
@Repository
public class NoticeSentStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    NoticeSentStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public void insert(EnvelopeKey key, Ask ask, LocalDateTime sentAt) {
        int number = jdbc.sql("""
                        select coalesce(max(told_no), 0) + 1 from ask_told
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into ask_told (election_id, envelope_no, told_no, ask, sent_at, recorded_at)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(
                        key.electionId(),
                        key.envelopeNo(),
                        number,
                        ask.code(),
                        sentAt,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }

    /** The voter was not told then, where a row says so; it stays readable. */
    public void takeBack(EnvelopeKey key, Ask ask, LocalDateTime sentAt) {
        jdbc.sql("""
                        update ask_told set taken_back_at = ?
                        where election_id = ? and envelope_no = ? and told_no = (
                            select max(t.told_no) from ask_told t where t.election_id = ask_told.election_id
                                and t.envelope_no = ask_told.envelope_no and t.ask = ? and t.sent_at = ?
                                and t.taken_back_at is null)""")
                .params(
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC),
                        key.electionId(),
                        key.envelopeNo(),
                        ask.code(),
                        sentAt)
                .update();
    }

    /** When the voters of several envelopes were first told of each ask, by envelope number. */
    public Map<EnvelopeNumber, Map<Ask, LocalDateTime>> first(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, Map<Ask, LocalDateTime>> first = new HashMap<>();
        jdbc.sql("""
                        select t.envelope_no, t.ask, min(t.sent_at) as sent_at
                        from unnest(cast(? as varchar array)) as wanted (id)
                        join ask_told t on t.election_id = ? and t.envelope_no = wanted.id
                        where t.taken_back_at is null
                        group by t.envelope_no, t.ask""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query((ResultSet row) -> {
                    first.computeIfAbsent(
                                    new EnvelopeNumber(row.getString("envelope_no")), any -> new EnumMap<>(Ask.class))
                            .put(
                                    Code.find(Ask.class, row.getString("ask")).orElseThrow(),
                                    row.getObject("sent_at", LocalDateTime.class));
                });
        return first;
    }
}
