package org.proviso.review.facts;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of searches for voters whom the match did not find. */
@Repository
public class SearchStore {

    /** One search as it was recorded. */
    record RecordedSearch(SearchFound found, String note, UserName by, Instant at) {}

    /** A search for the voter of an envelope. */
    private record OfEnvelope(EnvelopeNumber envelopeNo, RecordedSearch search) {}

    /** A search under its number, with the places as their column has them. */
    private record Row(
            EnvelopeKey key, int number, String lookedIn, SearchFound found, String note, UserName by, Instant at) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    SearchStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public void insert(EnvelopeKey key, Set<SearchPlace> lookedIn, SearchFound found, String note, UserName by) {
        int number = jdbc.sql("""
                        select coalesce(max(search_no), 0) + 1 from voter_search
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into voter_search (election_id, envelope_no, search_no, looked_in, found, note,
                            searched_by, searched_at)
                        values (:key.electionId, :key.envelopeNo, :number, :lookedIn, :found, :note, :by, :at)""")
                .paramSource(new Row(
                        key,
                        number,
                        lookedIn.stream().sorted().map(Code::code).collect(Collectors.joining(";")),
                        found,
                        note,
                        by,
                        clock.instant()))
                .update();
    }

    /** Takes back every standing search that did not find a record; they stay readable. How many there were. */
    public int takeBack(EnvelopeKey key, String because) {
        return jdbc.sql("""
                        update voter_search set taken_back_at = ?, taken_back_because = ?
                        where election_id = ? and envelope_no = ? and found <> ? and taken_back_at is null""")
                .params(clock.instant(), because, key.electionId(), key.envelopeNo(), SearchFound.RECORD)
                .update();
    }

    /** The standing searches for the voters of several envelopes, by envelope number, each in the order recorded. */
    Map<EnvelopeNumber, List<RecordedSearch>> of(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, List<RecordedSearch>> found = new HashMap<>();
        jdbc.sql("""
                        select s.*, s.searched_by as "by", s.searched_at as at from unnest(cast(? as varchar array)) as wanted (id)
                        join voter_search s on s.election_id = ? and s.envelope_no = wanted.id
                        where s.taken_back_at is null order by s.search_no""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query(OfEnvelope.class)
                .list()
                .forEach(row -> found.computeIfAbsent(row.envelopeNo(), any -> new ArrayList<>())
                        .add(row.search()));
        return found;
    }
}
