package org.proviso.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.proviso.core.Voter;

/** Reads {@code roll.csv}: the registration list as loaded on a day. No two rows have one voter id. */
public final class RollReader {

    private static final Columns COLUMNS = Columns.of(
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
    public static Columns columns() {
        return COLUMNS;
    }

    /** All voters in the order of the file. */
    public static List<Voter> read(Path file, Consumer<String> warn) {
        List<Voter> voters = new ArrayList<>();
        read(file, warn, voters::add);
        return voters;
    }

    /**
     * Hands over one voter after the other. Where a row further down is refused, the exception comes after the voters
     * above it: the caller then drops those.
     */
    public static void read(Path file, Consumer<String> warn, Consumer<Voter> each) {
        try (CsvTable table = CsvTable.open(file, COLUMNS, warn)) {
            VoterRows rows = new VoterRows(table);
            while (table.next()) {
                each.accept(rows.voter());
            }
        }
    }
}
