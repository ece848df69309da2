package org.proviso.review.queue;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseVersion;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What waits for a second person: proposals to review, signatures to compare, links to confirm. */
@Repository
class SecondReviewQueueStore {

    private static final String TO_READ = """
            from envelope_case c
            join proposal p on p.election_id = c.election_id and p.envelope_no = c.envelope_no and p.state = 'standing'
            join office_user u on u.user_name = p.proposed_by
            where c.election_id = :election and c.state = 'proposed' and p.proposed_by <> :reader
            """;

    private final JdbcClient jdbc;

    SecondReviewQueueStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<ProposalToReview> toRead(ElectionId electionId, UserName reader, int offset, int limit) {
        return jdbc.sql("select c.envelope_no, p.outcome, p.reasons, u.full_name, p.proposed_at " + TO_READ
                        + "order by p.proposed_at, c.envelope_no limit :limit offset :offset")
                .param("election", electionId)
                .param("reader", reader)
                .param("limit", limit)
                .param("offset", offset)
                .query(SecondReviewQueueStore::toRead)
                .list();
    }

    int toRead(ElectionId electionId, UserName reader) {
        return jdbc.sql("select count(*) " + TO_READ)
                .param("election", electionId)
                .param("reader", reader)
                .query(Integer.class)
                .single();
    }

    /**
     * The next signature: one that nobody has looked at and that nobody else has, or one that a single other reviewer
     * found different, in the order of envelope numbers, so that nothing tells the two apart.
     */
    Optional<SignatureToCompare> signature(ElectionId electionId, UserName looker, String after) {
        return jdbc.sql("""
                        select c.envelope_no, c.version, c.taken_by,
                            (select count(*) from answer_given a where a.election_id = c.election_id
                                and a.envelope_no = c.envelope_no and a.fact = 'signature_comparison'
                                and a.withdrawn_at is null) as looks
                        from envelope_case c
                        join envelope_image i on i.election_id = c.election_id and i.envelope_no = c.envelope_no
                            and i.kind = 'signature'
                        where c.election_id = :election and c.envelope_no > :after
                            and (c.state = 'open' or c.state = 'in_review' and c.taken_by = :looker
                                or c.state = 'in_review' and exists (select 1 from answer_given a
                                    where a.election_id = c.election_id and a.envelope_no = c.envelope_no
                                        and a.fact = 'signature_comparison' and a.withdrawn_at is null))
                            and not exists (select 1 from answer_given a where a.election_id = c.election_id
                                and a.envelope_no = c.envelope_no and a.fact = 'signature_comparison'
                                and a.withdrawn_at is null
                                and (a.fact_words <> 'differs_by_one' or a.given_by = :looker))
                        order by c.envelope_no limit 1""")
                .param("election", electionId)
                .param("looker", looker)
                .param("after", after)
                .query((row, number) -> new SignatureToCompare(
                        new CaseVersion(
                                new EnvelopeKey(electionId, new EnvelopeNumber(row.getString("envelope_no"))),
                                row.getInt("version")),
                        row.getInt("looks") == 0 && row.getString("taken_by") == null))
                .optional();
    }

    /** Links that the match is sure of, of open cases, whose voter has no other envelope. */
    List<SureLink> sureLinks(ElectionId electionId, int limit) {
        return jdbc.sql("""
                        select c.envelope_no, c.version, a.last_name, a.first_name, a.middle_name, a.suffix, l.voter_id,
                            l.probability, l.likeness
                        from envelope_case c
                        join link l on l.election_id = c.election_id and l.envelope_no = c.envelope_no
                        join affirmation a on a.election_id = c.election_id and a.envelope_no = c.envelope_no
                        where c.election_id = :election and c.state = 'open' and c.person_id is null
                            and l.identity = 'presumed'
                            and l.link_no = (select max(n.link_no) from link n
                                where n.election_id = c.election_id and n.envelope_no = c.envelope_no)
                            and not exists (select 1 from link o where o.election_id = c.election_id
                                and o.voter_id = l.voter_id and o.envelope_no <> c.envelope_no)
                        order by c.envelope_no limit :limit""")
                .param("election", electionId)
                .param("limit", limit)
                .query((row, number) -> sure(row, electionId))
                .list();
    }

    private static SureLink sure(ResultSet row, ElectionId electionId) throws SQLException {
        return new SureLink(
                new CaseVersion(
                        new EnvelopeKey(electionId, new EnvelopeNumber(row.getString("envelope_no"))),
                        row.getInt("version")),
                new PersonName(
                        row.getString("last_name"),
                        row.getString("first_name"),
                        row.getString("middle_name"),
                        row.getString("suffix")),
                new VoterId(row.getString("voter_id")),
                row.getDouble("probability"),
                CanonicalJsonReader.list(row.getString("likeness")).stream()
                        .map(String::valueOf)
                        .toList());
    }

    private static ProposalToReview toRead(ResultSet row, int number) throws SQLException {
        return new ProposalToReview(
                new EnvelopeNumber(row.getString("envelope_no")),
                Code.find(DecisionOutcome.class, row.getString("outcome")).orElseThrow(),
                Stream.of(row.getString("reasons").split(";"))
                        .flatMap(code -> Code.find(Reason.class, code).stream())
                        .toList(),
                row.getString("full_name"),
                row.getObject("proposed_at", OffsetDateTime.class).toInstant());
    }
}
