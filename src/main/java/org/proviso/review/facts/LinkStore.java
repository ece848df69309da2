package org.proviso.review.facts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.kept.LinkJson;
import org.proviso.review.VoterChoice;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of links: for each envelope every pairing with the roll there was; the newest holds. */
@Repository
public class LinkStore {

    private static final String NEWEST = """
            link.link_no = (select max(newer.link_no) from link newer
                where newer.election_id = link.election_id and newer.envelope_no = link.envelope_no)""";

    /** A link with its voter, likeness and candidates as their columns have them. */
    private record Row(
            EnvelopeKey key,
            Link link,
            @Nullable String voterId,
            String likeness,
            String candidates,
            int rollSnapshot,
            @Nullable String by,
            Instant at,
            String ground) {}

    private final JdbcClient jdbc;
    private final NamedParameterJdbcOperations batches;
    private final Clock clock;

    LinkStore(JdbcClient jdbc, NamedParameterJdbcOperations batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    /** The links the match presumes, the first of each envelope. */
    public void insertPresumed(ElectionId electionId, int rollSnapshot, Map<EnvelopeNumber, Link> links) {
        List<Row> rows = links.entrySet().stream()
                .map(linked ->
                        row(new EnvelopeKey(electionId, linked.getKey()), linked.getValue(), rollSnapshot, null, ""))
                .toList();
        batches.batchUpdate("""
                insert into link (election_id, envelope_no, link_no, identity, voter_id, probability, likeness,
                    candidates, snapshot_no, linked_at, ground)
                values (:key.electionId, :key.envelopeNo, 1, :link.identity, :voterId, :link.probability, :likeness,
                    :candidates, :rollSnapshot, :at, :ground)""", SqlParameterSourceUtils.createBatch(rows));
    }

    /** A newer link: by a person with the ground, or by a new match ({@code by} null, ground empty). */
    public void insert(EnvelopeKey key, Link link, int rollSnapshot, @Nullable UserName by, String ground) {
        jdbc.sql("""
                        insert into link (election_id, envelope_no, link_no, identity, voter_id, probability, likeness,
                            candidates, snapshot_no, linked_by, linked_at, ground)
                        select :key.electionId, :key.envelopeNo, coalesce(max(link_no), 0) + 1, :link.identity,
                            :voterId, :link.probability, :likeness, :candidates, :rollSnapshot, :by, :at, :ground
                        from link where election_id = :key.electionId and envelope_no = :key.envelopeNo""").paramSource(row(key, link, rollSnapshot, by, ground)).update();
    }

    private Row row(EnvelopeKey key, Link link, int rollSnapshot, @Nullable UserName by, String ground) {
        return new Row(
                key,
                link,
                Key.text(link.voterId()),
                LinkJson.likeness(link),
                LinkJson.candidates(link),
                rollSnapshot,
                Key.text(by),
                clock.instant(),
                ground);
    }

    public Optional<Link> newest(EnvelopeKey key) {
        return jdbc.sql("select * from link where election_id = ? and envelope_no = ? order by link_no desc limit 1")
                .params(key.electionId(), key.envelopeNo())
                .query(LinkStore::link)
                .optional();
    }

    /** The newest link of each of these envelopes, by envelope number. */
    public Map<EnvelopeNumber, Link> newest(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, Link> found = new HashMap<>();
        jdbc.sql("""
                        select link.* from unnest(cast(? as varchar array)) as wanted (id)
                        join link on link.election_id = ? and link.envelope_no = wanted.id
                        where\s""" + NEWEST)
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query((ResultSet row) -> {
                    found.put(new EnvelopeNumber(row.getString("envelope_no")), link(row, 0));
                });
        return found;
    }

    /** The link that the match presumed last, whatever a person said since. */
    public Optional<Link> presumed(EnvelopeKey key) {
        return jdbc.sql("""
                        select * from link where election_id = ? and envelope_no = ? and linked_by is null
                        order by link_no desc limit 1""")
                .params(key.electionId(), key.envelopeNo())
                .query(LinkStore::link)
                .optional();
    }

    /** Who settled the newest link and on what ground; empty where no person did, or a search found nobody. */
    public Optional<VoterChoice> choice(EnvelopeKey key) {
        return jdbc.sql("""
                        select voter_id, linked_by as "by", linked_at as at, ground from link
                        where election_id = ? and envelope_no = ? and linked_by is not null and voter_id is not null and\s""" + NEWEST)
                .params(key.electionId(), key.envelopeNo())
                .query(VoterChoice.class)
                .optional();
    }

    /** The newest link of every envelope, by envelope number. */
    public Map<EnvelopeNumber, Link> all(ElectionId electionId) {
        Map<EnvelopeNumber, Link> links = new LinkedHashMap<>();
        jdbc.sql("select * from link where election_id = ? and " + NEWEST + " order by envelope_no")
                .param(electionId)
                .query((ResultSet row) -> {
                    links.put(new EnvelopeNumber(row.getString("envelope_no")), link(row, 0));
                });
        return links;
    }

    /** The envelopes linked, or presumed linked, to a voter. */
    public Set<EnvelopeNumber> envelopesOf(ElectionId electionId, VoterId voterId) {
        return new LinkedHashSet<>(
                jdbc.sql("select envelope_no from link where election_id = ? and voter_id = ? and " + NEWEST)
                        .params(electionId, voterId)
                        .query(EnvelopeNumber.class)
                        .list());
    }

    /** The same of several voters, by voter. */
    Map<VoterId, Set<EnvelopeNumber>> envelopesOf(ElectionId electionId, Collection<VoterId> voterIds) {
        Map<VoterId, Set<EnvelopeNumber>> found = new HashMap<>();
        jdbc.sql("""
                        select link.voter_id, link.envelope_no from unnest(cast(? as varchar array)) as wanted (id)
                        join link on link.election_id = ? and link.voter_id = wanted.id
                        where\s""" + NEWEST)
                .param(voterIds.stream().map(Key::value).toArray(String[]::new))
                .param(electionId)
                .query((ResultSet row) -> {
                    found.computeIfAbsent(new VoterId(row.getString("voter_id")), any -> new LinkedHashSet<>())
                            .add(new EnvelopeNumber(row.getString("envelope_no")));
                });
        return found;
    }

    private static Link link(ResultSet row, int number) throws SQLException {
        return LinkJson.read(
                Code.find(VoterIdentityFact.class, row.getString("identity")).orElseThrow(),
                VoterId.orNull(row.getString("voter_id")),
                row.getDouble("probability"),
                row.getString("likeness"),
                row.getString("candidates"));
    }
}
