package org.proviso.intake.desk;

import java.util.List;
import java.util.Locale;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds envelopes with their voters' names in the tables of intake. */
@Repository
class FoundEnvelopeStore {

    private final JdbcClient jdbc;

    FoundEnvelopeStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Envelopes with this envelope or receipt number, or whose voter's last name begins with it. */
    List<FoundEnvelope> find(ElectionId electionId, String sought, int limit) {
        String typed = sought.strip().toLowerCase(Locale.ROOT);
        String receipt = CheckedReceipt.find(typed).map(ReceiptNumber::value).orElse(typed);
        String begins = typed.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%";
        return jdbc.sql("""
                        select e.envelope_no, e.receipt_no, e.voting_location, a.first_name, a.last_name
                        from envelope e join affirmation a
                            on a.election_id = e.election_id and a.envelope_no = e.envelope_no
                        where e.election_id = :election and (lower(e.envelope_no) = :typed
                            or lower(e.receipt_no) in (:typed, :receipt) or lower(a.last_name) like :begins escape '!')
                        order by a.last_name, a.first_name, e.place fetch first :limit rows only""")
                .param("election", electionId)
                .param("typed", typed)
                .param("receipt", receipt)
                .param("begins", begins)
                .param("limit", limit)
                .query((row, number) -> new FoundEnvelope(
                        new EnvelopeNumber(row.getString("envelope_no")),
                        ReceiptNumber.orNull(row.getString("receipt_no")),
                        (row.getString("first_name") + " " + row.getString("last_name")).strip(),
                        row.getString("voting_location")))
                .list();
    }
}
