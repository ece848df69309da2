package org.proviso.election;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.LongConsumer;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.Sha256;
import org.proviso.files.SetAsideRow;
import org.proviso.files.csv.SetAsideFile;
import org.proviso.files.election.ElectionFolder;

/**
 * An election folder read without the bad rows of its outside lists. Those lie in a file that goes when this is closed;
 * only the first are held. The hash is over the hash of the folder and the rows.
 */
record FolderWithoutRows(ElectionFolder folder, Path rows, List<SetAsideRow> first, String rowsHash)
        implements Closeable {

    static final int FIRST = 100;

    /** A row longer than this is cut: with its reason it must still fit into one row of a file. */
    private static final int LONGEST = 900_000;

    static FolderWithoutRows read(Path path, String contentHash, LongConsumer progress) {
        Path rows = temporary();
        List<SetAsideRow> first = new ArrayList<>();
        MessageDigest digest = Sha256.digest();
        digest.update(contentHash.getBytes(StandardCharsets.UTF_8));
        try {
            ElectionFolder folder = SetAsideFile.during(
                    rows,
                    out -> ElectionFolder.read(path, progress, row -> {
                        SetAsideRow kept = row.cutAt(LONGEST);
                        digest.update((kept.list() + "\n" + kept.line() + "\n" + kept.asItCame() + "\0")
                                .getBytes(StandardCharsets.UTF_8));
                        if (first.size() < FIRST) {
                            first.add(kept);
                        }
                        out.take(kept);
                    }));
            return new FolderWithoutRows(folder, rows, first, HexFormat.of().formatHex(digest.digest()));
        } catch (RuntimeException e) {
            delete(rows);
            throw e;
        }
    }

    /** Whether of one list more rows are left out than one person may. */
    boolean needsTwo(SetAsideShare share) {
        return folder.setAside().entrySet().stream()
                .anyMatch(list -> share.needsTwo(list.getValue(), read(list.getKey())));
    }

    private int read(String list) {
        return switch (list) {
            case "streets.csv" -> folder.streets().size();
            case "mail-ballots.csv" ->
                folder.mailBallots().values().stream().mapToInt(List::size).sum();
            case "check-ins.csv" ->
                folder.checkIns().values().stream().mapToInt(List::size).sum();
            case "voted-elsewhere.csv" -> folder.votedElsewhere().size();
            default -> folder.voters().size();
        };
    }

    ElectionId id() {
        return folder.election().id();
    }

    @Override
    public void close() {
        delete(rows);
    }

    private static Path temporary() {
        try {
            return Files.createTempFile("set-aside", ".csv");
        } catch (IOException e) {
            throw new UncheckedIOException("The temporary file of rows cannot be created.", e);
        }
    }

    private static void delete(Path rows) {
        try {
            Files.deleteIfExists(rows);
        } catch (IOException e) {
            throw new UncheckedIOException("The temporary file of rows cannot be deleted.", e);
        }
    }
}
