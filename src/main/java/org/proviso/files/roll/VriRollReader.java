package org.proviso.files.roll;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;

/**
 * Reads a roll from NIST Voter Records Interchange JSON: a results document, never a request. The format carries no
 * date or channel of registration, which a warning says once.
 */
public final class VriRollReader {

    private final String file;
    private final Map<VoterId, Integer> lines = new HashMap<>();
    private int withoutStreet;
    private int firstWithoutStreet;

    private VriRollReader(String file) {
        this.file = file;
    }

    /** All voters in the order of the file. */
    public static List<Voter> read(Path path, Consumer<String> warn) {
        List<Voter> voters = new ArrayList<>();
        read(path, warn, voters::add);
        return voters;
    }

    /**
     * Hands over one voter after the other. Where a record further down is refused, the exception comes after the
     * voters above it: the caller then drops those.
     */
    public static void read(Path path, Consumer<String> warn, Consumer<Voter> each) {
        read(path, warn, null, each);
    }

    /** Hands over the voter of every good record; a bad one is set aside where somebody takes it. */
    public static void read(Path path, Consumer<String> warn, @Nullable SetAside aside, Consumer<Voter> each) {
        VriRollReader reader = new VriRollReader(path.getFileName().toString());
        JsonRecords.read(
                path,
                "VRI.VoterRecordResults",
                "VoterRecord",
                List.of("TransactionId"),
                aside,
                record -> each.accept(reader.voter(record)));
        reader.warn(warn);
    }

    private Voter voter(JsonValue record) {
        VriVoterReader source = new VriVoterReader(record);
        Voter voter = source.voter();
        Integer earlier = lines.putIfAbsent(voter.voterId(), record.line());
        if (earlier != null) {
            String both = "in the records on lines " + earlier + " and " + record.line();
            throw record.wrong(
                    "voter id " + InputException.quoted(voter.voterId().value()) + " appears twice, " + both);
        }
        if (voter.residence().street().isEmpty() && withoutStreet++ == 0) {
            firstWithoutStreet = record.line();
        }
        return voter;
    }

    private void warn(Consumer<String> warn) {
        if (!lines.isEmpty()) {
            warn.accept(file + ": this format has no registration date or channel; both are unknown for every voter");
        }
        if (withoutStreet > 0) {
            String first = ", the first in the record on line " + firstWithoutStreet;
            warn.accept(file + ": " + withoutStreet + " residence addresses have no street" + first);
        }
    }
}
