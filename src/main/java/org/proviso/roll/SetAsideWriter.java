package org.proviso.roll;

import java.io.Closeable;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.Sha256;
import org.proviso.files.SetAside;
import org.proviso.files.SetAsideRow;
import org.proviso.roll.aside.SetAsideList;

/**
 * Writes the rows of one list that are set aside into their table, slice by slice, and takes their hash. The hash begins
 * with that of the file: whoever has only the ledger cannot tell by trying whose row it was.
 */
final class SetAsideWriter implements SetAside, Closeable {

    private static final String COLUMNS =
            "election_id, snapshot_no, row_no, list, line_no, column_name, reason, as_it_came";

    private static final int LONGEST_NAME = 255;
    private static final int LONGEST_COLUMN = 1_000;
    private static final int LONGEST_REASON = 4_000;
    private static final int LONGEST_ROW = 1_000_000;

    private final ElectionId electionId;
    private final int snapshot;
    private final RowBatchWriter rows;
    private final MessageDigest digest = Sha256.digest();

    SetAsideWriter(BulkLoadStore copies, ElectionId electionId, int snapshot, String contentHash) {
        this.electionId = electionId;
        this.snapshot = snapshot;
        rows = new RowBatchWriter(copies, "set_aside_row", COLUMNS);
        hash(contentHash);
    }

    @Override
    public void take(SetAsideRow row) {
        hash(row.line() + "\n" + row.asItCame());
        rows.add(new Object[] {
            electionId,
            snapshot,
            rows.rows() + 1,
            cut(row.list(), LONGEST_NAME),
            row.line(),
            cut(row.column(), LONGEST_COLUMN),
            cut(row.reason(), LONGEST_REASON),
            cut(row.asItCame(), LONGEST_ROW)
        });
    }

    /** Writes what is left, and says what it came to. */
    SetAsideList finish() {
        rows.finish();
        return rows.rows() == 0
                ? SetAsideList.NONE
                : new SetAsideList(rows.rows(), HexFormat.of().formatHex(digest.digest()), null, null);
    }

    @Override
    public void close() {
        rows.close();
    }

    private void hash(String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }

    private static String cut(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest);
    }
}
