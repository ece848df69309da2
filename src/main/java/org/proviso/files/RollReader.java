package org.proviso.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.proviso.core.Entitlement;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
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
            while (table.next()) {
                each.accept(voter(table.row()));
            }
        }
    }

    private static Voter voter(CsvRow row) {
        return new Voter(
                row.requiredKey("voter_id"),
                row.name(),
                row.date("date_of_birth"),
                residence(row),
                registration(row),
                row.key("id_last4"),
                row.key("drivers_license"),
                row.key("party"),
                row.date("party_since"),
                row.yesNo("id_required"),
                row.yesNo("number_matched"),
                row.date("last_voted_on"),
                row.text("former_name"),
                row.yesNo("confidential").isYes(),
                row.text("mail_address"),
                row.key("language"));
    }

    private static Voter.Residence residence(CsvRow row) {
        return new Voter.Residence(
                row.text("house_number"),
                row.text("street"),
                row.text("unit"),
                row.text("city"),
                row.text("zip"),
                row.key("precinct"),
                row.key("split"));
    }

    private static Voter.Registration registration(CsvRow row) {
        return new Voter.Registration(
                row.date("registration_date"),
                row.code("registration_channel", RegistrationChannel.class),
                row.date("received_on"),
                row.requiredCode("status", RollStatus.class),
                row.text("status_reason"),
                row.date("status_on"),
                row.date("confirmation_sent_on"),
                row.code("entitlement", Entitlement.class, Entitlement.FULL));
    }
}
