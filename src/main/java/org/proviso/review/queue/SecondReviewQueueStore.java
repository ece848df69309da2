package org.proviso.review.queue;

import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.PersonName;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.review.CaseVersion;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What waits for a second person: proposals to review, signatures to compare, links to confirm. */
@Repository
class SecondReviewQueueStore {

    /** What is proposed of outcomes and of ends without one; where an end waits, no older proposal does. */
    private static final String TO_READ = """
            from (select c.envelope_no, p.outcome as "as", '' as to_county, p.reasons, p.proposed_by, p.proposed_at
                from envelope_case c
                join proposal p on p.election_id = c.election_id and p.envelope_no = c.envelope_no
                    and p.state = 'standing'
                where c.election_id = :election and c.state = 'proposed'
                    and not exists (select 1 from end_proposal e where e.election_id = c.election_id
                        and e.envelope_no = c.envelope_no and e.state = 'standing')
                union all
                select c.envelope_no, e.ends_as, e.to_county, e.reasons, e.proposed_by, e.proposed_at
                from envelope_case c
                join end_proposal e on e.election_id = c.election_id and e.envelope_no = c.envelope_no
                    and e.state = 'standing'
                where c.election_id = :election and c.state = 'proposed') w
            join office_user u on u.user_name = w.proposed_by
            where w.proposed_by <> :reader
            """;

    /**
     * That nothing keeps a person from a look at the signature of the case {@code c}: neither a look of their own, nor that
     * they saw the first finding, nor, where the law wants two parties, that the first reviewer is of theirs.
     */
    static final String MAY_LOOK = """
            and not exists (select 1 from answer_given f join office_user g on g.user_name = f.given_by
                where f.election_id = c.election_id and f.envelope_no = c.envelope_no
                    and f.fact = 'signature_comparison' and f.withdrawn_at is null and f.fact_words = 'differs_by_one'
                    and (f.given_by = :looker or g.party = :otherPartyThan
                        or exists (select 1 from signature_finding_seen s where s.election_id = f.election_id
                            and s.envelope_no = f.envelope_no and s.answer_no = f.answer_no and s.seen_by = :looker)))
            """;

    /** A sure link with its evidence as its column has it. */
    private record Sure(CaseVersion seen, PersonName name, VoterId voterId, double probability, String likeness) {
        SureLink link() {
            List<String> evidence = CanonicalJsonReader.list(likeness).stream()
                    .map(String::valueOf)
                    .toList();
            return new SureLink(seen, name, voterId, probability, evidence, List.of());
        }
    }

    private final JdbcClient jdbc;

    SecondReviewQueueStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<ProposalToReview> toRead(ElectionId electionId, UserName reader, int offset, int limit) {
        return jdbc.sql("""
                        select w.envelope_no, w."as", w.to_county, w.reasons, u.full_name as proposed_by,
                            w.proposed_at as at
                        """ + TO_READ + "order by w.proposed_at, w.envelope_no limit :limit offset :offset")
                .param("election", electionId)
                .param("reader", reader)
                .param("limit", limit)
                .param("offset", offset)
                .query(ProposalToReview.class)
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
    Optional<SignatureToCompare> signature(ElectionId electionId, SignatureLooker looker, String after) {
        return jdbc.sql("""
                        select c.election_id, c.envelope_no, c.version, c.taken_by is null
                            and not exists (select 1 from answer_given a where a.election_id = c.election_id
                                and a.envelope_no = c.envelope_no and a.fact = 'signature_comparison'
                                and a.withdrawn_at is null) as to_take
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
                                and a.fact_words <> 'differs_by_one')
                        """ + MAY_LOOK + "order by c.envelope_no limit 1")
                .param("election", electionId)
                .param("looker", looker.userName())
                .param("otherPartyThan", looker.otherPartyThan())
                .param("after", after)
                .query(SignatureToCompare.class)
                .optional();
    }

    /**
     * Links that the match is sure of, of open cases, whose voter has no other envelope. Read in the order of the cases' key,
     * so that the first page ends where it is full: {@code coalesce} keeps H2 from indexes of other columns, which lead
     * to every open case and a sort.
     */
    List<SureLink> sureLinks(ElectionId electionId, int limit) {
        return jdbc.sql("""
                        select c.election_id, c.envelope_no, c.version, a.last_name as "last", a.first_name as "first",
                            a.middle_name as middle, a.suffix, l.voter_id, l.probability, l.likeness
                        from envelope_case c
                        join link l on l.election_id = c.election_id and l.envelope_no = c.envelope_no
                        join affirmation a on a.election_id = c.election_id and a.envelope_no = c.envelope_no
                        where c.election_id = :election and c.envelope_no > ''
                            and coalesce(c.state, '') = 'open' and coalesce(c.person_id, '') = ''
                            and l.identity = 'presumed'
                            and l.link_no = (select max(n.link_no) from link n
                                where n.election_id = c.election_id and n.envelope_no = c.envelope_no)
                            and not exists (select 1 from link o where o.election_id = c.election_id
                                and o.voter_id = l.voter_id and o.envelope_no <> c.envelope_no)
                        order by c.election_id, c.envelope_no limit :limit""").param("election", electionId).param("limit", limit).query(Sure.class).list().stream()
                .map(Sure::link)
                .toList();
    }
}
