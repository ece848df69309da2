package org.proviso.board;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what is on the agenda of each session. */
@Repository
public class AgendaStore {

    private final JdbcClient jdbc;

    AgendaStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public List<AgendaItem> all(SessionKey key) {
        return jdbc.sql("select * from agenda_item where election_id = ? and session_no = ? order by place")
                .params(key.electionId(), key.sessionNo())
                .query(AgendaStore::row)
                .list();
    }

    public Optional<AgendaItem> find(SessionKey key, String envelopeNo) {
        return jdbc.sql("select * from agenda_item where election_id = ? and session_no = ? and envelope_no = ?")
                .params(key.electionId(), key.sessionNo(), envelopeNo)
                .query(AgendaStore::row)
                .optional();
    }

    /** Writes the items of an agenda over those that it has of the same envelopes. */
    public void put(SessionKey key, List<AgendaItem> items) {
        for (AgendaItem item : items) {
            if (update(key, item) == 0) {
                insert(key, item);
            }
        }
    }

    private int update(SessionKey key, AgendaItem item) {
        return jdbc.sql("""
                        update agenda_item set proposed_outcome = ?, primary_reason = ?, consent_group = ?,
                            pulled_out_by = ?, version = version + 1
                        where election_id = ? and session_no = ? and envelope_no = ?""")
                .param(code(item.proposed()))
                .param(code(item.primaryReason()))
                .param(item.group())
                .param(item.pulledOutBy())
                .param(key.electionId())
                .param(key.sessionNo())
                .param(item.envelopeNo())
                .update();
    }

    private void insert(SessionKey key, AgendaItem item) {
        jdbc.sql("""
                        insert into agenda_item (election_id, session_no, envelope_no, place, proposed_outcome,
                            primary_reason, consent_group, pulled_out_by, version)
                        values (?, ?, ?, ?, ?, ?, ?, ?, 0)""")
                .param(key.electionId())
                .param(key.sessionNo())
                .param(item.envelopeNo())
                .param(item.place())
                .param(code(item.proposed()))
                .param(code(item.primaryReason()))
                .param(item.group())
                .param(item.pulledOutBy())
                .update();
    }

    public void pullOut(SessionKey key, String envelopeNo, int version, String by) {
        int written = jdbc.sql("""
                        update agenda_item set pulled_out_by = ?, version = version + 1
                        where election_id = ? and session_no = ? and envelope_no = ? and version = ?""")
                .params(by, key.electionId(), key.sessionNo(), envelopeNo, version)
                .update();
        if (written == 0) {
            throw new OptimisticLockingFailureException("The agenda was changed since you saw it: " + envelopeNo + ".");
        }
    }

    private static @Nullable String code(@Nullable Code code) {
        return code == null ? null : code.code();
    }

    private static AgendaItem row(ResultSet row, int number) throws SQLException {
        return new AgendaItem(
                row.getString("envelope_no"),
                row.getInt("place"),
                found(DecisionOutcome.class, row.getString("proposed_outcome")),
                found(Reason.class, row.getString("primary_reason")),
                row.getObject("consent_group", Integer.class),
                row.getString("pulled_out_by"),
                row.getInt("version"));
    }

    static <E extends Enum<E> & Code> @Nullable E found(Class<E> type, @Nullable String code) {
        return code == null ? null : Code.find(type, code).orElseThrow();
    }
}
