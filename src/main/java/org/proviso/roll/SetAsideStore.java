package org.proviso.roll;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.files.SetAsideRow;
import org.proviso.roll.aside.MendRow;
import org.proviso.roll.aside.SetAsideList;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of rows that were set aside, and of the lists they stood in. */
@Repository
class SetAsideStore {

    private static final String SELECT = """
            select list, line_no as line, column_name as "column", reason, as_it_came from set_aside_row
            where election_id = ? and snapshot_no = ? and row_no > ? order by row_no limit ?""";

    private static final int AT_ONCE = 1_000;

    private final JdbcClient jdbc;
    private final BulkLoadStore copies;
    private final Clock clock;

    SetAsideStore(JdbcClient jdbc, BulkLoadStore copies, Clock clock) {
        this.jdbc = jdbc;
        this.copies = copies;
        this.clock = clock;
    }

    /** Takes the rows of a list as they are found; nothing stands in the tables before {@link SetAsideWriter#finish}. */
    SetAsideWriter writer(ElectionId electionId, int snapshot, String contentHash) {
        return new SetAsideWriter(copies, electionId, snapshot, contentHash);
    }

    void add(ElectionId electionId, int snapshot, SetAsideList list, String header) {
        jdbc.sql("""
                        insert into set_aside_list (election_id, snapshot_no, rows_aside, rows_hash, header)
                        values (?, ?, ?, ?, ?)""")
                .params(electionId, snapshot, list.rowsAside(), list.rowsHash(), header)
                .update();
    }

    SetAsideList find(ElectionId electionId, int snapshot) {
        return jdbc.sql("""
                        select rows_aside, rows_hash, because, decided_by from set_aside_list
                        where election_id = ? and snapshot_no = ?""")
                .params(electionId, snapshot)
                .query(SetAsideList.class)
                .optional()
                .orElse(SetAsideList.NONE);
    }

    /** The first rows of a list, in the order of its file. */
    List<SetAsideRow> first(ElectionId electionId, int snapshot, int most) {
        return after(electionId, snapshot, 0, most);
    }

    /** Every row of a list; only some are held at a time. */
    void each(ElectionId electionId, int snapshot, Consumer<SetAsideRow> each) {
        int last = 0;
        List<SetAsideRow> rows = after(electionId, snapshot, last, AT_ONCE);
        while (!rows.isEmpty()) {
            rows.forEach(each);
            last += rows.size();
            rows = after(electionId, snapshot, last, AT_ONCE);
        }
    }

    /** The lines of the first rows that contain every one of these words, in any letters. */
    List<Integer> lines(ElectionId electionId, int snapshot, List<String> words, int most) {
        List<Object> values = new ArrayList<>(List.of(electionId, snapshot));
        words.forEach(word -> values.add(word.toLowerCase(Locale.ROOT)));
        values.add(most);
        return jdbc.sql("select line_no from set_aside_row where election_id = ? and snapshot_no = ?"
                        + " and position(? in lower(as_it_came)) > 0".repeat(words.size())
                        + " order by row_no limit ?")
                .params(values)
                .query(Integer.class)
                .list();
    }

    /** How many rows of the lists in use are set aside, of all kinds. */
    int inUse(ElectionId electionId) {
        return jdbc.sql("""
                        select coalesce(sum(a.rows_aside), 0) from set_aside_list a
                        where a.election_id = ? and (a.snapshot_no = 0 or a.snapshot_no in (
                            select c.snapshot_no from current_snapshot c where c.election_id = a.election_id))""").param(electionId).query(Integer.class).single();
    }

    private List<SetAsideRow> after(ElectionId electionId, int snapshot, int row, int most) {
        return jdbc.sql(SELECT)
                .params(electionId, snapshot, row, most)
                .query(SetAsideRow.class)
                .list();
    }

    /** Somebody decided to use the list without them; a decision made before stays as it is. */
    void decide(ElectionId electionId, int snapshot, String because, UserName by) {
        jdbc.sql("""
                        update set_aside_list set because = ?, decided_by = ?, decided_at = ?
                        where election_id = ? and snapshot_no = ? and decided_by is null""")
                .params(because, by, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC), electionId, snapshot)
                .update();
    }

    /** One row by its place among those of its list. */
    Optional<SetAsideRow> row(ElectionId electionId, int snapshot, int row) {
        return after(electionId, snapshot, row - 1, 1).stream().findFirst();
    }

    /** The header under which the rows of a list stood; empty of a file that is no CSV file. */
    String header(ElectionId electionId, int snapshot) {
        return jdbc.sql("select header from set_aside_list where election_id = ? and snapshot_no = ?")
                .params(electionId, snapshot)
                .query(String.class)
                .optional()
                .orElse("");
    }

    /** A newer list has the rows of the one before aside, but for one that is mended, and what was decided of them. */
    void carryOver(ElectionId electionId, int from, int to, int without, String hash) {
        jdbc.sql("""
                        insert into set_aside_row (election_id, snapshot_no, row_no, list, line_no, column_name, reason,
                            as_it_came)
                        select election_id, cast(? as integer), case when row_no > ? then row_no - 1 else row_no end, list,
                            line_no, column_name, reason, as_it_came
                        from set_aside_row where election_id = ? and snapshot_no = ? and row_no <> ?""").params(to, without, electionId, from, without).update();
        jdbc.sql("""
                        insert into set_aside_list (election_id, snapshot_no, rows_aside, rows_hash, header, because,
                            decided_by, decided_at)
                        select election_id, cast(? as integer), rows_aside - 1, cast(? as varchar), header, because,
                            decided_by, decided_at
                        from set_aside_list where election_id = ? and snapshot_no = ? and rows_aside > 1""").params(to, hash, electionId, from).update();
    }

    /** Keeps what a person made of a row, beside how it came. */
    void mended(ElectionId electionId, int to, int from, MendRow row, String mended, UserName by) {
        jdbc.sql("""
                        insert into set_aside_mended (election_id, snapshot_no, from_no, list, line_no, as_it_came, mended,
                            because, mended_by, mended_at)
                        select election_id, cast(? as integer), snapshot_no, list, line_no, as_it_came, cast(? as varchar),
                            cast(? as varchar), cast(? as varchar), cast(? as timestamp with time zone)
                        from set_aside_row where election_id = ? and snapshot_no = ? and row_no = ?""")
                .params(
                        to,
                        mended,
                        row.because(),
                        by,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC),
                        electionId,
                        from,
                        row.rowNo())
                .update();
    }

    /** How many rows of a list, or of one it was made from, a person mended. */
    int mendedIn(ElectionId electionId, int snapshot) {
        int count = 0;
        Optional<Integer> from = mendedFrom(electionId, snapshot);
        while (from.isPresent()) {
            count++;
            from = mendedFrom(electionId, from.get());
        }
        return count;
    }

    /** The list of which a row was mended to make this one. */
    Optional<Integer> mendedFrom(ElectionId electionId, int snapshot) {
        return jdbc.sql("select from_no from set_aside_mended where election_id = ? and snapshot_no = ?")
                .params(electionId, snapshot)
                .query(Integer.class)
                .optional();
    }

    /** The rows of a list that the office refused go with it. */
    void remove(ElectionId electionId, int snapshot) {
        jdbc.sql("delete from set_aside_row where election_id = ? and snapshot_no = ?")
                .params(electionId, snapshot)
                .update();
        jdbc.sql("delete from set_aside_list where election_id = ? and snapshot_no = ?")
                .params(electionId, snapshot)
                .update();
    }
}
