package org.proviso.files.election;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Condition;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.Envelope.Source;
import org.proviso.core.Envelope.VoterSignature;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.matching.spelling.WrittenBirthDate;
import org.proviso.files.InputException;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code envelopes.csv}: the provisional envelopes with their affirmations, as keyed. */
public final class EnvelopeReader {

    private static final CsvColumns COLUMNS = CsvColumns.of(
                    "envelope_no",
                    "receipt_no",
                    "source?",
                    "voting_location",
                    "precinct_cast",
                    "ballot_style_cast",
                    "party_ballot_cast?",
                    "cast_at",
                    "extended_hours",
                    "in_line_at_close?",
                    "issue_reasons",
                    "last_name",
                    "first_name",
                    "middle_name",
                    "suffix",
                    "former_name?",
                    "date_of_birth",
                    "residence_address_line",
                    "unit",
                    "city",
                    "zip",
                    "former_address_line?",
                    "moved_on?",
                    "mail_address_line?",
                    "id_last4",
                    "drivers_license",
                    "phone?",
                    "email?",
                    "language?",
                    "party?",
                    "id_shown",
                    "id_kind?",
                    "declaration?",
                    "mail_ballot_surrendered?",
                    "sent_here_by_official?",
                    "official_note?",
                    "statements_ticked?",
                    "voter_signed",
                    "mark_witness?",
                    "official_signed",
                    "envelope_condition",
                    "signature_image?",
                    "field_states?")
            .unique("envelope_no");

    private static final String BIRTH = "date_of_birth";

    /** The most that is kept of what a voter wrote as date of birth. */
    private static final int LONGEST_BIRTH = 40;

    private EnvelopeReader() {}

    /** The columns of the envelopes, for a caller that takes cells straight from the rows of its own table. */
    public static CsvColumns columns() {
        return COLUMNS;
    }

    public static NumberedRows<Envelope> read(Path file, Consumer<String> warn) {
        NumberedRows<Envelope> envelopes = CsvTable.read(
                file,
                COLUMNS,
                warn,
                row -> new Envelope(
                        new EnvelopeNumber(row.requiredKey("envelope_no")),
                        receiptNo(row),
                        row.code("source", Source.class, Source.POLL),
                        cast(row),
                        affirmation(row),
                        handling(row)));
        tellOfNoDates(envelopes, warn);
        return envelopes;
    }

    private static void tellOfNoDates(NumberedRows<Envelope> envelopes, Consumer<String> warn) {
        List<EnvelopeNumber> numbers = envelopes.values().stream()
                .filter(envelope -> !envelope.affirmation().birthDateAsWritten().isEmpty())
                .map(Envelope::envelopeNo)
                .toList();
        if (!numbers.isEmpty()) {
            warn.accept(envelopes.file()
                    + ": the date of birth is kept as the voter wrote it, because it is not a date, on "
                    + (numbers.size() == 1 ? "1 envelope" : numbers.size() + " envelopes") + ", first on "
                    + numbers.get(0));
        }
    }

    /** The date of birth; null where none is written, and where what is written is not a date. */
    public static @Nullable LocalDate birthDate(CsvRow row) {
        return birthDateAsWritten(row).isEmpty() ? row.date(BIRTH) : null;
    }

    /**
     * What the voter wrote as date of birth, such as 13/40/1980 or 1980, where it is not a date; empty otherwise. A date in
     * another form than the file's is a mistake of the file, not of the voter, and left to be refused.
     */
    public static String birthDateAsWritten(CsvRow row) {
        String text = row.text(BIRTH).strip();
        if (text.isEmpty() || WrittenBirthDate.date(text).isPresent()) {
            return "";
        }
        if (text.length() > LONGEST_BIRTH) {
            throw row.wrong(BIRTH, InputException.quoted(text) + " has more than " + LONGEST_BIRTH + " characters");
        }
        return text;
    }

    private static @Nullable ReceiptNumber receiptNo(CsvRow row) {
        String text = row.key("receipt_no");
        return text.isEmpty()
                ? null
                : ReceiptNumber.find(text)
                        .orElseThrow(() ->
                                row.wrong("receipt_no", InputException.quoted(text) + " cannot be a receipt number"));
    }

    private static Envelope.Cast cast(CsvRow row) {
        return new Envelope.Cast(
                row.key("voting_location"),
                row.key("precinct_cast"),
                row.key("ballot_style_cast"),
                row.key("party_ballot_cast"),
                row.dateTime("cast_at"),
                row.yesNo("extended_hours"),
                row.yesNo("in_line_at_close"),
                row.words("issue_reasons"));
    }

    private static Envelope.Affirmation affirmation(CsvRow row) {
        return new Envelope.Affirmation(
                row.name(),
                row.text("former_name"),
                birthDate(row),
                birthDateAsWritten(row),
                new Address(row.text("residence_address_line"), row.text("unit"), row.text("city"), row.text("zip")),
                former(row.text("former_address_line")),
                row.date("moved_on"),
                row.text("mail_address_line"),
                row.key("id_last4"),
                row.key("drivers_license"),
                row.text("phone"),
                row.text("email"),
                row.key("language"),
                row.key("party"),
                row.words("statements_ticked"),
                fieldStates(row));
    }

    private static Envelope.Handling handling(CsvRow row) {
        return new Envelope.Handling(
                row.yesNo("id_shown"),
                row.text("id_kind"),
                row.text("declaration"),
                row.yesNo("mail_ballot_surrendered"),
                row.yesNo("sent_here_by_official"),
                row.text("official_note"),
                row.code("voter_signed", VoterSignature.class, VoterSignature.UNKNOWN),
                row.yesNo("mark_witness"),
                row.yesNo("official_signed"),
                row.code("envelope_condition", Condition.class, Condition.UNKNOWN),
                row.key("signature_image"));
    }

    private static Address former(String line) {
        return line.isBlank() ? Address.NONE : new Address(line, "", "", "");
    }

    /** Pairs such as {@code zip=illegible;id_last4=left_blank}. */
    private static Map<Field, FieldState> fieldStates(CsvRow row) {
        Map<Field, FieldState> states = new EnumMap<>(Field.class);
        for (String pair : row.words("field_states")) {
            String[] sides = pair.split("=", -1);
            if (sides.length != 2) {
                throw row.wrong(
                        "field_states", InputException.quoted(pair) + " is not a pair (write it as field=state)");
            }
            Field field = row.codeIn("field_states", sides[0], Field.class);
            if (states.put(field, row.codeIn("field_states", sides[1], FieldState.class)) != null) {
                throw row.wrong("field_states", field.code() + " appears twice");
            }
        }
        return Collections.unmodifiableMap(states);
    }
}
