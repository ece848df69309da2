package org.proviso.review.find;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.VoterId;
import org.proviso.review.CaseState;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Looks up envelopes by what is written on them. */
@Repository
class FindStore {

    private static final String ENVELOPES = """
            select c.envelope_no, e.receipt_no, e.voting_location, c.state, a.last_name, a.first_name, a.middle_name,
                a.suffix
            from envelope_case c
            join envelope e on e.election_id = c.election_id and e.envelope_no = c.envelope_no
            left join affirmation a on a.election_id = c.election_id and a.envelope_no = c.envelope_no
            where c.election_id = :election and\s""";

    private final JdbcClient jdbc;

    FindStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<FindResult.EnvelopeHit> numbered(ElectionId electionId, Collection<String> numbers) {
        return jdbc.sql(ENVELOPES + "c.envelope_no in (:numbers) order by c.envelope_no")
                .param("election", electionId)
                .param("numbers", numbers)
                .query(FindStore::envelope)
                .list();
    }

    List<FindResult.EnvelopeHit> receipt(ElectionId electionId, ReceiptNumber receiptNo) {
        return jdbc.sql(ENVELOPES + "e.receipt_no = :receipt")
                .param("election", electionId)
                .param("receipt", receiptNo)
                .query(FindStore::envelope)
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
                .query(FindStore::envelope)
                .list();
    }

    List<FindResult.EnvelopeHit> born(ElectionId electionId, LocalDate on, int limit) {
        return jdbc.sql(ENVELOPES + "a.birth_date = :born order by c.envelope_no limit :limit")
                .param("election", electionId)
                .param("born", on)
                .param("limit", limit)
                .query(FindStore::envelope)
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

    private static FindResult.EnvelopeHit envelope(ResultSet row, int number) throws SQLException {
        return new FindResult.EnvelopeHit(
                new EnvelopeNumber(row.getString("envelope_no")),
                ReceiptNumber.orNull(row.getString("receipt_no")),
                row.getString("voting_location"),
                new PersonName(
                        text(row, "last_name"), text(row, "first_name"), text(row, "middle_name"), text(row, "suffix")),
                Code.find(CaseState.class, row.getString("state")).orElseThrow());
    }

    private static String text(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        return text == null ? "" : text;
    }
}
