package org.proviso.intake.keying;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Affirmation;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.Envelope.Handling;
import org.proviso.intake.CodeColumn;

/** What an envelope says, box by box as text, by the names that the columns of {@code envelopes.csv} have. */
public final class EnvelopeBoxes {

    private final Map<String, String> texts = new LinkedHashMap<>();

    private EnvelopeBoxes() {}

    /** Every box as it is kept, such as {@code (illegible)} where it was not simply keyed. */
    public static Map<String, String> of(Affirmation said, Handling seen) {
        Map<String, String> words = new LinkedHashMap<>();
        read(said, seen).forEach((box, keyed) -> words.put(box, keyed.words()));
        return words;
    }

    /** Every box with its text and its state. */
    public static Map<String, KeyedText> read(Affirmation said, Handling seen) {
        EnvelopeBoxes boxes = new EnvelopeBoxes();
        boxes.person(said);
        boxes.address("", said.residence());
        boxes.address("former_", said.former());
        boxes.rest(said);
        boxes.handling(seen);
        Map<String, KeyedText> keyed = new LinkedHashMap<>();
        boxes.texts.forEach((box, text) -> keyed.put(box, KeyedText.of(text)));
        said.fieldStates()
                .forEach((field, state) ->
                        keyed.put(field.code(), new KeyedText(boxes.texts.getOrDefault(field.code(), ""), state)));
        return keyed;
    }

    /** Where they differ; a box of the earlier one that nobody had keyed yet cannot. */
    static List<BoxDifference> differences(Envelope before, Affirmation said, Handling seen) {
        Map<String, KeyedText> now = read(said, seen);
        List<BoxDifference> differences = new ArrayList<>();
        read(before.affirmation(), before.handling()).forEach((box, keyed) -> {
            KeyedText keyedNow = now.getOrDefault(box, KeyedText.of(""));
            if (keyed.state() != FieldState.NOT_YET_KEYED && !keyed.words().equals(keyedNow.words())) {
                differences.add(new BoxDifference(box, keyedNow, keyed));
            }
        });
        return List.copyOf(differences);
    }

    private void person(Affirmation said) {
        texts.put("last_name", said.name().last());
        texts.put("first_name", said.name().first());
        texts.put("middle_name", said.name().middle());
        texts.put("suffix", said.name().suffix());
        texts.put("former_name", said.formerName());
        texts.put("date_of_birth", said.birthDate() == null ? said.birthDateAsWritten() : text(said.birthDate()));
    }

    private void address(String which, Address address) {
        texts.put(which.isEmpty() ? "residence_address_line" : which + "address_line", address.line());
        texts.put(which + "unit", address.unit());
        texts.put(which + "city", address.city());
        texts.put(which + "zip", address.zip());
    }

    private void rest(Affirmation said) {
        texts.put("moved_on", text(said.movedOn()));
        texts.put("mail_address_line", said.mailAddress());
        texts.put("id_last4", said.idLast4());
        texts.put("drivers_license", said.driversLicense());
        texts.put("phone", said.phone());
        texts.put("email", said.email());
        texts.put("language", said.language());
        texts.put("party", said.party());
        texts.put(
                "statements_ticked",
                CodeColumn.joined(said.statementsTicked().stream().sorted().toList()));
    }

    private void handling(Handling seen) {
        texts.put("id_shown", CodeColumn.word(seen.idShown()));
        texts.put("id_kind", seen.idKind());
        texts.put("declaration", seen.declaration());
        texts.put("mail_ballot_surrendered", CodeColumn.word(seen.mailBallotSurrendered()));
        texts.put("sent_here_by_official", CodeColumn.word(seen.sentHereByOfficial()));
        texts.put("official_note", seen.officialNote());
        texts.put("voter_signed", seen.voterSigned().code());
        texts.put("mark_witness", CodeColumn.word(seen.markWitness()));
        texts.put("official_signed", CodeColumn.word(seen.officialSigned()));
        texts.put("envelope_condition", seen.condition().code());
    }

    private static String text(@Nullable LocalDate date) {
        return date == null ? "" : date.toString();
    }
}
