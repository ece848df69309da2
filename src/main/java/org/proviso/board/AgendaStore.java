package org.proviso.board;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSource;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of what is on the agenda of each session. */
@Repository
public class AgendaStore {

    private static final String SELECT = "select a.*, a.proposed_outcome as proposed, a.consent_group as \"group\" ";

    /** An item of a session's agenda. */
    private record Row(SessionKey key, AgendaItem item) {}

    private final JdbcClient jdbc;
    private final NamedParameterJdbcOperations batches;

    AgendaStore(JdbcClient jdbc, NamedParameterJdbcOperations batches) {
        this.jdbc = jdbc;
        this.batches = batches;
    }

    public List<AgendaItem> all(SessionKey key) {
        return jdbc.sql(SELECT + "from agenda_item a where election_id = ? and session_no = ? order by place")
                .params(key.electionId(), key.sessionNo())
                .query(AgendaItem.class)
                .list();
    }

    public Optional<AgendaItem> find(SessionKey key, EnvelopeNumber envelopeNo) {
        return jdbc.sql(SELECT + "from agenda_item a where election_id = ? and session_no = ? and envelope_no = ?")
                .params(key.electionId(), key.sessionNo(), envelopeNo)
                .query(AgendaItem.class)
                .optional();
    }

    /** The items of several envelopes, by envelope number; one that is not on the agenda is not in it. */
    public Map<EnvelopeNumber, AgendaItem> find(SessionKey key, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, AgendaItem> found = new HashMap<>();
        jdbc.sql(SELECT + """
                        from unnest(cast(? as varchar array)) as wanted (id)
                        join agenda_item a on a.election_id = ? and a.session_no = ? and a.envelope_no = wanted.id""")
                .param(envelopeNos.stream().map(Key::value).toArray(String[]::new))
                .param(key.electionId())
                .param(key.sessionNo())
                .query(AgendaItem.class)
                .list()
                .forEach(item -> found.put(item.envelopeNo(), item));
        return found;
    }

    /** Envelopes of an agenda that are on the agenda of another session of the same body too, one that is not closed. */
    List<EnvelopeNumber> onAnother(BoardSession session) {
        return jdbc.sql("""
                        select a.envelope_no from agenda_item a
                        join agenda_item o on o.election_id = a.election_id and o.envelope_no = a.envelope_no
                            and o.session_no <> a.session_no
                        join board_session s on s.election_id = o.election_id and s.session_no = o.session_no
                        where a.election_id = ? and a.session_no = ? and s.body = ? and s.closed_at is null
                        order by a.place""")
                .params(session.key().electionId(), session.key().sessionNo(), session.body())
                .query(EnvelopeNumber.class)
                .list();
    }

    /** Writes the items of an agenda over those that it has of the same envelopes. */
    public void put(SessionKey key, List<AgendaItem> items) {
        Map<EnvelopeNumber, AgendaItem> there =
                find(key, items.stream().map(AgendaItem::envelopeNo).toList());
        Map<Boolean, List<AgendaItem>> known =
                items.stream().collect(Collectors.partitioningBy(item -> there.containsKey(item.envelopeNo())));
        update(key, Objects.requireNonNull(known.get(true), "a list split in two has both parts"));
        insert(key, Objects.requireNonNull(known.get(false), "a list split in two has both parts"));
    }

    private void update(SessionKey key, List<AgendaItem> items) {
        batches.batchUpdate("""
                update agenda_item set proposed_outcome = :item.proposed, primary_reason = :item.primaryReason,
                    consent_group = :item.group, pulled_out_by = :item.pulledOutBy, version = version + 1
                where election_id = :key.electionId and session_no = :key.sessionNo
                    and envelope_no = :item.envelopeNo""", rows(key, items));
    }

    private void insert(SessionKey key, List<AgendaItem> items) {
        batches.batchUpdate("""
                insert into agenda_item (election_id, session_no, envelope_no, place, proposed_outcome, primary_reason,
                    consent_group, pulled_out_by, version)
                values (:key.electionId, :key.sessionNo, :item.envelopeNo, :item.place, :item.proposed,
                    :item.primaryReason, :item.group, :item.pulledOutBy, 0)""", rows(key, items));
    }

    private static SqlParameterSource[] rows(SessionKey key, List<AgendaItem> items) {
        return SqlParameterSourceUtils.createBatch(
                items.stream().map(item -> new Row(key, item)).toList());
    }

    public void pullOut(SessionKey key, EnvelopeNumber envelopeNo, int version, UserName by) {
        int written = jdbc.sql("""
                        update agenda_item set pulled_out_by = ?, version = version + 1
                        where election_id = ? and session_no = ? and envelope_no = ? and version = ?""")
                .params(by, key.electionId(), key.sessionNo(), envelopeNo, version)
                .update();
        if (written == 0) {
            throw new OptimisticLockingFailureException("The agenda was changed since you saw it: " + envelopeNo + ".");
        }
    }
}
