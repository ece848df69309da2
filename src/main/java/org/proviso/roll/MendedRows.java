package org.proviso.roll;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.chain.Sha256;
import org.proviso.files.csv.CsvOutput;
import org.proviso.roll.aside.MendRow;
import org.springframework.stereotype.Component;

/**
 * Makes a newer list of the one in use with one of its set-aside rows mended: the mended row first, as the strict reader takes
 * it, then every row of the list before. A list is never changed, so what rests on the older one stays true.
 */
@Component
class MendedRows {

    private final SnapshotStore snapshots;
    private final ListLoader loader;
    private final ListCopyStore copies;
    private final SetAsideStore asides;

    MendedRows(SnapshotStore snapshots, ListLoader loader, ListCopyStore copies, SetAsideStore asides) {
        this.snapshots = snapshots;
        this.loader = loader;
        this.copies = copies;
        this.asides = asides;
    }

    /** The number of the newer list; empty where the list has a row of that key already, and nothing was written. */
    Optional<Integer> mend(ElectionId id, Snapshot list, MendRow row, UserName by) {
        Path file = file(list.kind(), row);
        try {
            loader.check(list.kind(), file);
            String text = Files.readString(file);
            String hash = Sha256.of(snapshots.hashOf(id, list.number()) + "\n" + row.rowNo() + "\n" + text);
            Snapshot newer = loader.load(id, list.kind(), file, hash, warning -> {});
            if (copies.sharesKey(id, list.kind(), list.number(), newer.number())) {
                snapshots.remove(id, newer);
                return Optional.empty();
            }
            copies.copy(id, list.kind(), list.number(), newer.number());
            snapshots.count(id, newer.number(), list.rows() + 1);
            asides.carryOver(id, list.number(), newer.number(), row.rowNo(), hash);
            asides.mended(
                    id,
                    newer.number(),
                    list.number(),
                    row,
                    text.lines().skip(1).findFirst().orElse(""),
                    by);
            return Optional.of(newer.number());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            delete(file);
        }
    }

    private static Path file(SnapshotKind kind, MendRow row) {
        try {
            Path file = Files.createTempDirectory("mended").resolve(kind.code().replace('_', '-') + ".csv");
            CsvOutput.write(file, row.columns(), out -> out.row(row.cells()));
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
            Files.deleteIfExists(file.getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
