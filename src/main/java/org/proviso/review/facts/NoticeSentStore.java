package org.proviso.review.facts;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.rules.Ask;
import org.proviso.review.CaseKey;
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

    public void insert(CaseKey key, Ask ask, LocalDateTime sentAt) {
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

    /** When the voter was first told of each ask. */
    Map<Ask, LocalDateTime> first(CaseKey key) {
        Map<Ask, LocalDateTime> first = new EnumMap<>(Ask.class);
        jdbc.sql("""
                        select ask, min(sent_at) as sent_at from ask_told
                        where election_id = ? and envelope_no = ? group by ask""").params(key.electionId(), key.envelopeNo()).query(row -> {
            first.put(
                    Code.find(Ask.class, row.getString("ask")).orElseThrow(),
                    row.getObject("sent_at", LocalDateTime.class));
        });
        return first;
    }
}
