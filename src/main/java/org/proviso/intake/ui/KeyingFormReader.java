package org.proviso.intake.ui;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.Envelope.Condition;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.Envelope.VoterSignature;
import org.proviso.core.YesNo;
import org.proviso.intake.keying.KeyedAddress;
import org.proviso.intake.keying.KeyedAffirmation;
import org.proviso.intake.keying.KeyedHandling;
import org.proviso.ui.field.TypedDates;

/** Reads what stands in the boxes of the keying form, or says beside which box what is wrong. */
final class KeyingFormReader {

    static final String STATEMENTS = "statements_ticked";
    static final String STATE = "_state";
    static final String KEPT = "_kept";

    private static final String ZIP = "[0-9 -]*";

    private final Map<String, String> boxes;
    private final LocalDate today;
    private final Map<String, String> problems = new LinkedHashMap<>();

    KeyingFormReader(Map<String, String> boxes, LocalDate today) {
        this.boxes = boxes;
        this.today = today;
        for (KeyingBox box : KeyingBox.values()) {
            check(box);
        }
        if (text(STATEMENTS).isEmpty() && state(Field.STATEMENTS_TICKED) == FieldState.KEYED) {
            problems.put(STATEMENTS, "Check the statements the voter checked, or mark left blank.");
        }
    }

    /** What is wrong, by box. */
    Map<String, String> problems() {
        return problems;
    }

    private void check(KeyingBox box) {
        String text = text(box.code());
        if (text.isEmpty()) {
            boolean unexplained = box.field()
                    .filter(field -> state(field) == FieldState.KEYED)
                    .isPresent();
            if (unexplained) {
                problems.put(box.code(), "Required. Key it, or mark it left blank, illegible or refused.");
            }
        } else {
            String problem = problem(box, text, today);
            if (!problem.isEmpty()) {
                problems.put(box.code(), problem);
            }
        }
    }

    /** What cannot stand in a box; empty where that is possible. */
    static String problem(KeyingBox box, String text, LocalDate today) {
        if (text.length() > box.most()) {
            return "At most " + box.most() + " characters.";
        }
        return switch (box) {
            case MOVED_ON -> dateProblem(text, today);
            case ID_LAST4 -> text.matches("[0-9A-Za-z]{0,10}") ? "" : "Digits and letters only.";
            case ZIP -> text.matches(ZIP) ? "" : "Digits and a hyphen only. If it cannot be read, mark it illegible.";
            default -> "";
        };
    }

    private static String dateProblem(String text, LocalDate today) {
        return TypedDates.day(text)
                .map(day -> day.isAfter(today) ? "This date is in the future." : "")
                .orElse(TypedDates.LIKE_A_DAY);
    }

    /**
     * What to ask about a text that is possible and unlikely; empty where it is not. The former ZIP may be abroad, and a
     * voter may write a date of birth that is no date, or one of today.
     */
    static String question(KeyingBox box, String text, LocalDate today) {
        return switch (box) {
            case FORMER_ZIP -> text.matches(ZIP) ? "" : "A ZIP has digits and a hyphen only. Is " + text + " right?";
            case DATE_OF_BIRTH -> text.isEmpty() ? "" : birthDateQuestion(text, today);
            default -> "";
        };
    }

    private static String birthDateQuestion(String text, LocalDate today) {
        return TypedDates.day(text)
                .map(day -> day.isAfter(today) ? "This date is in the future. Is this what the voter wrote?" : "")
                .orElse("\"" + text + "\" is not a date. Is this what the voter wrote?");
    }

    KeyedAffirmation affirmation() {
        return new KeyedAffirmation(
                text("last_name"),
                text("first_name"),
                text("middle_name"),
                text("suffix"),
                text("former_name"),
                day("date_of_birth"),
                day("date_of_birth") == null ? text("date_of_birth") : "",
                new KeyedAddress(text("residence_address_line"), text("unit"), text("city"), text("zip")),
                new KeyedAddress(
                        text("former_address_line"), text("former_unit"), text("former_city"), text("former_zip")),
                day("moved_on"),
                text("mail_address_line"),
                text("id_last4"),
                text("drivers_license"),
                text("phone"),
                text("email"),
                text("language"),
                text("party"),
                statements(),
                states());
    }

    KeyedHandling seen() {
        return new KeyedHandling(
                yesNo("id_shown"),
                text("id_kind"),
                text("declaration"),
                yesNo("mail_ballot_surrendered"),
                yesNo("sent_here_by_official"),
                text("official_note"),
                Code.find(VoterSignature.class, text("voter_signed")).orElse(VoterSignature.UNKNOWN),
                yesNo("mark_witness"),
                yesNo("official_signed"),
                Code.find(Condition.class, text("envelope_condition")).orElse(Condition.UNKNOWN));
    }

    private Set<String> statements() {
        Set<String> ticked = new LinkedHashSet<>();
        for (String code : text(STATEMENTS).split(";", 0)) {
            if (!code.isBlank()) {
                ticked.add(code);
            }
        }
        return ticked;
    }

    private Map<Field, FieldState> states() {
        Map<Field, FieldState> states = new EnumMap<>(Field.class);
        for (Field field : Field.values()) {
            if (state(field) != FieldState.KEYED) {
                states.put(field, state(field));
            }
        }
        return states;
    }

    private FieldState state(Field field) {
        return Code.find(FieldState.class, text(field.code() + STATE)).orElse(FieldState.KEYED);
    }

    private String text(String box) {
        return boxes.getOrDefault(box, "").strip();
    }

    private @Nullable LocalDate day(String box) {
        return TypedDates.day(text(box)).orElse(null);
    }

    private YesNo yesNo(String box) {
        return switch (text(box)) {
            case "yes" -> YesNo.YES;
            case "no" -> YesNo.NO;
            default -> YesNo.UNKNOWN;
        };
    }
}
