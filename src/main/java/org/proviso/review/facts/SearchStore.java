package org.proviso.review.facts;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.review.CaseKey;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of searches for voters whom the match did not find. */
@Repository
public class SearchStore {

    /** One search as it was recorded. */
    record RecordedSearch(SearchFound found, String note, String by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    SearchStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public void insert(CaseKey key, Set<SearchPlace> lookedIn, SearchFound found, String note, String by) {
        int number = jdbc.sql("""
                        select coalesce(max(search_no), 0) + 1 from voter_search
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into voter_search (election_id, envelope_no, search_no, looked_in, found, note,
                            searched_by, searched_at)
                        values (?, ?, ?, ?, ?, ?, ?, ?)""")
                .params(
                        key.electionId(),
                        key.envelopeNo(),
                        number,
                        lookedIn.stream().sorted().map(Code::code).collect(Collectors.joining(";")),
                        found.code(),
                        note,
                        by,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }

    List<RecordedSearch> of(CaseKey key) {
        return jdbc.sql("select * from voter_search where election_id = ? and envelope_no = ? order by search_no")
                .params(key.electionId(), key.envelopeNo())
                .query((row, number) -> new RecordedSearch(
                        Code.find(SearchFound.class, row.getString("found")).orElseThrow(),
                        row.getString("note"),
                        row.getString("searched_by"),
                        row.getObject("searched_at", OffsetDateTime.class).toInstant()))
                .list();
    }
}
