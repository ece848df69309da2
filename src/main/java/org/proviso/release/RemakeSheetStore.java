package org.proviso.release;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of remake sheets. */
@Repository
class RemakeSheetStore {

    private static final String SELECT =
            "select s.*, s.sheet_no as number from remake_sheet s where s.election_id = ? ";

    /** A sheet with its contests as their column has them. */
    private record Row(RemakeSheet sheet, String contests) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    RemakeSheetStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    void insert(RemakeSheet sheet) {
        jdbc.sql("""
                        insert into remake_sheet (election_id, batch_no, sheet_no, style_cast, style_right, contests,
                            ballots, version)
                        values (:sheet.electionId, :sheet.batchNo, :sheet.number, :sheet.styleCast, :sheet.styleRight,
                            :contests, :sheet.ballots, 0)""")
                .paramSource(new Row(sheet, String.join(";", sheet.contests())))
                .update();
    }

    /** The sheets of a batch that nobody has begun to copy, made anew. */
    void renew(Batch batch, List<RemakeSheet> sheets) {
        jdbc.sql("delete from remake_sheet where election_id = ? and batch_no = ?")
                .params(batch.electionId(), batch.number())
                .update();
        sheets.forEach(this::insert);
    }

    List<RemakeSheet> of(ElectionId electionId, int batchNo) {
        return jdbc.sql(SELECT + "and s.batch_no = ? order by s.sheet_no")
                .params(electionId, batchNo)
                .query(RemakeSheet.class)
                .list();
    }

    List<RemakeSheet> all(ElectionId electionId) {
        return jdbc.sql(SELECT + "order by s.batch_no, s.sheet_no")
                .param(electionId)
                .query(RemakeSheet.class)
                .list();
    }

    /** One sheet; {@link IllegalArgumentException} where there is none. */
    RemakeSheet known(ElectionId electionId, int batchNo, int number) {
        return of(electionId, batchNo).stream()
                .filter(sheet -> sheet.number() == number)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Batch " + batchNo + " has no sheet " + number + "."));
    }

    void begin(RemakeSheet sheet, UserName by) {
        changed(jdbc.sql("""
                        update remake_sheet set first_copier = ?, version = version + 1
                        where election_id = ? and batch_no = ? and sheet_no = ? and version = ?""")
                .params(by, sheet.electionId(), sheet.batchNo(), sheet.number(), sheet.version())
                .update());
    }

    void remade(RemakeSheet sheet, UserName by) {
        changed(jdbc.sql("""
                        update remake_sheet set second_copier = ?, remade_at = ?, version = version + 1
                        where election_id = ? and batch_no = ? and sheet_no = ? and version = ?""")
                .params(
                        by,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC),
                        sheet.electionId(),
                        sheet.batchNo(),
                        sheet.number(),
                        sheet.version())
                .update());
    }

    private static void changed(int rows) {
        if (rows == 0) {
            throw new OptimisticLockingFailureException("The sheet was changed meanwhile.");
        }
    }
}
