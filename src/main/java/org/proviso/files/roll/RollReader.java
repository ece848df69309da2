package org.proviso.files.roll;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Voter;
import org.proviso.files.SetAside;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;

/** Reads {@code roll.csv}: the registration list as loaded on a day. No two rows have one voter id. */
public final class RollReader {

    private static final CsvColumns COLUMNS = CsvColumns.of(
                    "voter_id",
                    "last_name",
                    "first_name",
                    "middle_name",
                    "suffix",
                    "date_of_birth",
                    "house_number",
                    "street",
                    "unit",
                    "city",
                    "zip",
                    "precinct",
                    "split?",
                    "registration_date",
                    "registration_channel?",
                    "received_on?",
                    "status",
                    "status_reason?",
                    "status_on?",
                    "confirmation_sent_on?",
                    "last_voted_on?",
                    "id_last4",
                    "drivers_license",
                    "party",
                    "party_since?",
                    "id_required",
                    "number_matched?",
                    "entitlement?",
                    "former_name?",
                    "confidential?",
                    "mail_address?",
                    "language?")
            .unique("voter_id");

    private RollReader() {}

    /** The columns of a roll, for a caller that takes cells straight from the rows of its own table. */
    public static CsvColumns columns() {
        return COLUMNS;
    }

    /** The names of all columns, those first that every roll has. */
    public static List<String> columnNames() {
        List<String> names = new ArrayList<>(COLUMNS.required());
        names.addAll(COLUMNS.optional());
        return names;
    }

    /** All voters in the order of the file. */
    public static List<Voter> read(Path file, Consumer<String> warn) {
        List<Voter> voters = new ArrayList<>();
        read(file, warn, voters::add);
        return voters;
    }

    /**
     * Hands over one voter after the other. Where a row is refused, the rest of the file is still looked at, and the
     * exception, which names every bad row, comes after the good voters above the first: the caller then drops those.
     */
    public static void read(Path file, Consumer<String> warn, Consumer<Voter> each) {
        read(file, warn, null, each);
    }

    /** Hands over the voter of every good row; a bad one is set aside where somebody takes it. */
    public static void read(Path file, Consumer<String> warn, @Nullable SetAside aside, Consumer<Voter> each) {
        CsvTable.each(
                file,
                COLUMNS,
                warn,
                aside,
                table -> new VoterRowReader(table)::voter,
                (line, voter) -> each.accept(voter));
    }
}
