package org.proviso.roll;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.ElectionId;
import org.proviso.core.VoterId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** What differs between two snapshots of a kind, found by the database, so that no list is ever held whole. */
@Repository
class SnapshotComparisonStore {

    private final JdbcTemplate jdbc;

    SnapshotComparisonStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** The voters whose rows were added, removed or changed, in the order of their ids. */
    Set<VoterId> touched(ElectionId id, SnapshotKind kind, int before, int after) {
        if (before == after) {
            return Set.of();
        }
        return switch (kind) {
            case ROLL -> touchedOnRoll(id, before, after);
            case MAIL_BALLOTS -> touchedBy("mail_ballot", "serial, issued_on, state, state_on", id, before, after);
            case CHECK_INS ->
                touchedBy(
                        "check_in",
                        "voting_location, checked_in_at, kind, ballot_issued, cancelled_at",
                        id,
                        before,
                        after);
            case VOTED_ELSEWHERE -> throw new IllegalArgumentException("the state's list names no voter");
        };
    }

    /** One voter has one row, so each side is looked up in the other by its key. */
    private Set<VoterId> touchedOnRoll(ElectionId id, int before, int after) {
        String differs = VoterStore.CONTENT.stream()
                .map(column -> "n." + column + " is distinct from o." + column)
                .collect(Collectors.joining(" or "));
        String sql = """
                select n.voter_id from voter n
                left join voter o on o.election_id = ? and o.snapshot_no = ? and o.voter_id = n.voter_id
                where n.election_id = ? and n.snapshot_no = ? and (o.voter_id is null or %s)
                union all
                select o.voter_id from voter o
                where o.election_id = ? and o.snapshot_no = ? and not exists (
                    select 1 from voter n
                    where n.election_id = ? and n.snapshot_no = ? and n.voter_id = o.voter_id)
                order by 1""".formatted(differs);
        return keys(jdbc.queryForList(
                sql, String.class, id.value(), before, id.value(), after, id.value(), before, id.value(), after));
    }

    /** Rows alike on both sides cancel out, however many of them there are. */
    private Set<VoterId> touchedBy(String table, String columns, ElectionId id, int before, int after) {
        String sql = """
                select distinct voter_id from (
                    select voter_id from %1$s where election_id = ? and snapshot_no in (?, ?)
                    group by voter_id, %2$s
                    having sum(case when snapshot_no = ? then 1 else -1 end) <> 0) changed
                order by 1""".formatted(table, columns);
        return keys(jdbc.queryForList(sql, String.class, id.value(), before, after, after));
    }

    private static Set<VoterId> keys(List<String> ids) {
        return ids.stream().map(VoterId::new).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The lines of the state's list that only one side has, those that are gone first. */
    List<StateListChange> changedLines(ElectionId id, int before, int after) {
        if (before == after) {
            return List.of();
        }
        String columns = "last_name, first_name, middle_name, suffix, birth_date, id_last4, drivers_license, county,"
                + " how, voted_on";
        String sql = """
                select %1$s, sum(case when snapshot_no = ? then 1 else -1 end) as surplus from voted_elsewhere
                where election_id = ? and snapshot_no in (?, ?)
                group by %1$s having sum(case when snapshot_no = ? then 1 else -1 end) <> 0
                order by surplus, %1$s""".formatted(columns);
        return jdbc.query(
                sql,
                (row, number) -> new StateListChange(VotingRecordStore.elsewhere(row), row.getInt("surplus") > 0),
                after,
                id.value(),
                before,
                after,
                after);
    }
}
