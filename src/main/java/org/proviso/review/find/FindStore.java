package org.proviso.review.find;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.VoterId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Looks up envelopes by what is written on them. */
@Repository
class FindStore {

    private static final String ENVELOPES = """
            select c.envelope_no, e.receipt_no, e.voting_location, e.precinct_cast as precinct, c.queue_reasons as reasons,
                c.outlook, c.state, coalesce(u.full_name, '') as holder, coalesce(a.last_name, '') as "last",
                coalesce(a.first_name, '') as "first", coalesce(a.middle_name, '') as middle,
                coalesce(a.suffix, '') as suffix
            from envelope_case c
            join envelope e on e.election_id = c.election_id and e.envelope_no = c.envelope_no
            left join affirmation a on a.election_id = c.election_id and a.envelope_no = c.envelope_no
            left join office_user u on u.user_name = c.taken_by
            where c.election_id = :election and\s""";

    private final JdbcClient jdbc;

    FindStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<FindResult.EnvelopeHit> numbered(ElectionId electionId, Collection<String> numbers) {
        return jdbc.sql(ENVELOPES + "c.envelope_no in (:numbers) order by c.envelope_no")
                .param("election", electionId)
                .param("numbers", numbers)
                .query(FindResult.EnvelopeHit.class)
                .list();
    }

    List<FindResult.EnvelopeHit> receipt(ElectionId electionId, ReceiptNumber receiptNo) {
        return jdbc.sql(ENVELOPES + "e.receipt_no = :receipt")
                .param("election", electionId)
                .param("receipt", receiptNo)
                .query(FindResult.EnvelopeHit.class)
                .list();
    }

    List<FindResult.EnvelopeHit> named(ElectionId electionId, String last, String first, int limit) {
        String capitals = last.toUpperCase(Locale.ROOT);
        return jdbc.sql(ENVELOPES + """
                        (a.last_name between :last and :end or a.last_name between :capitals and :capitalsEnd)
                        and lower(a.first_name) like :first
                        order by a.last_name, a.first_name, c.envelope_no limit :limit""")
                .param("election", electionId)
                .param("last", last)
                .param("end", last + "\uFFFD")
                .param("capitals", capitals)
                .param("capitalsEnd", capitals + "\uFFFD")
                .param("first", first.toLowerCase(Locale.ROOT).replaceAll("[%_\\\\]", "") + "%")
                .param("limit", limit)
                .query(FindResult.EnvelopeHit.class)
                .list();
    }

    List<FindResult.EnvelopeHit> born(ElectionId electionId, LocalDate on, int limit) {
        return jdbc.sql(ENVELOPES + "a.birth_date = :born order by c.envelope_no limit :limit")
                .param("election", electionId)
                .param("born", on)
                .param("limit", limit)
                .query(FindResult.EnvelopeHit.class)
                .list();
    }

    /** The envelopes whose newest link is to that voter. */
    List<EnvelopeNumber> linkedTo(ElectionId electionId, VoterId voterId) {
        return jdbc.sql("""
                        select l.envelope_no from link l where l.election_id = ? and l.voter_id = ? and l.link_no = (
                            select max(n.link_no) from link n
                            where n.election_id = l.election_id and n.envelope_no = l.envelope_no)
                        order by l.envelope_no""")
                .params(electionId, voterId)
                .query(EnvelopeNumber.class)
                .list();
    }
}
