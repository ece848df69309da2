package org.proviso.review.facts;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of research requests. */
@Repository
public class ResearchStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    ResearchStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public int insert(EnvelopeKey key, WaitsFor waitsFor, String addressee, String asked, UserName by) {
        int number = jdbc.sql("""
                        select coalesce(max(request_no), 0) + 1 from research_request
                        where election_id = ? and envelope_no = ?""")
                .params(key.electionId(), key.envelopeNo())
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into research_request (election_id, envelope_no, request_no, waits_for, addressee, asked,
                            asked_by, asked_at, version)
                        values (:electionId, :envelopeNo, :number, :waitsFor, :addressee, :asked, :by, :at, 0)""")
                .param("electionId", key.electionId())
                .param("envelopeNo", key.envelopeNo())
                .param("number", number)
                .param("waitsFor", waitsFor)
                .param("addressee", addressee)
                .param("asked", asked)
                .param("by", by)
                .param("at", now())
                .update();
        return number;
    }

    public void found(EnvelopeKey key, int number, int version, String found, UserName by) {
        int written = jdbc.sql("""
                        update research_request set found = ?, found_by = ?, found_at = ?, version = version + 1
                        where election_id = ? and envelope_no = ? and request_no = ? and version = ?""")
                .params(found, by, now(), key.electionId(), key.envelopeNo(), number, version)
                .update();
        if (written == 0) {
            throw new OptimisticLockingFailureException("This request was answered meanwhile.");
        }
    }

    public List<ResearchRequest> of(EnvelopeKey key) {
        return jdbc.sql("""
                        select r.*, r.request_no as number from research_request r
                        where r.election_id = ? and r.envelope_no = ? order by r.request_no""")
                .params(key.electionId(), key.envelopeNo())
                .query(ResearchRequest.class)
                .list();
    }

    /** Requests of an election that nobody has answered, the oldest first. */
    public List<OpenRequest> open(ElectionId electionId) {
        return jdbc.sql("""
                        select r.*, r.request_no as number from research_request r
                        where r.election_id = ? and r.found is null order by r.asked_at, r.envelope_no""").param(electionId).query(OpenRequest.class).list();
    }

    /** A page of those that wait for an answer of one of these, the oldest first, with who asked by full name. */
    public List<OpenRequest> open(ElectionId electionId, Collection<WaitsFor> waitsFor, int offset, int limit) {
        return jdbc.sql("""
                        select r.election_id, r.envelope_no, r.request_no as number, r.waits_for, r.addressee, r.asked,
                            u.full_name as asked_by, r.asked_at, r.found, r.found_by, r.version
                        from research_request r join office_user u on u.user_name = r.asked_by
                        where r.election_id = :election and r.found is null and r.waits_for in (:waitsFor)
                        order by r.asked_at, r.envelope_no, r.request_no limit :limit offset :offset""")
                .param("election", electionId)
                .param("waitsFor", waitsFor)
                .param("limit", limit)
                .param("offset", offset)
                .query(OpenRequest.class)
                .list();
    }

    public int count(ElectionId electionId, Collection<WaitsFor> waitsFor) {
        return jdbc.sql("""
                        select count(*) from research_request r
                        where r.election_id = :election and r.found is null and r.waits_for in (:waitsFor)""")
                .param("election", electionId)
                .param("waitsFor", waitsFor)
                .query(Integer.class)
                .single();
    }

    /** A request without an answer, and the envelope it is about. */
    public record OpenRequest(EnvelopeKey key, ResearchRequest request) {}

    private OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
