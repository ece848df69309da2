package org.proviso.intake.keying;

import jakarta.validation.Valid;
import jakarta.validation.constraints.AssertTrue;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.PersonName;

/**
 * What the voter wrote, as one person keyed it whole. A box that holds nothing is empty; of those whose state is kept,
 * an empty one says why: left blank, illegible or refused. A date of birth that is none is kept as the voter wrote it.
 */
public record KeyedAffirmation(
        @NotNull @Size(max = 120) String lastName,
        @NotNull @Size(max = 120) String firstName,
        @NotNull @Size(max = 120) String middleName,
        @NotNull @Size(max = 20) String suffix,
        @NotNull @Size(max = 300) String formerName,
        @Nullable LocalDate birthDate,
        @NotNull @Size(max = 40) String birthDateAsWritten,
        @NotNull @Valid KeyedAddress residence,
        @NotNull @Valid KeyedAddress former,
        @Nullable LocalDate movedOn,
        @NotNull @Size(max = 500) String mailAddress,
        @NotNull @Pattern(regexp = "[0-9A-Za-z]{0,10}") String idLast4,
        @NotNull @Size(max = 40) String driversLicense,
        @NotNull @Size(max = 40) String phone,
        @NotNull @Size(max = 200) String email,
        @NotNull @Size(max = 40) String language,
        @NotNull @Size(max = 40) String party,

        @NotNull @Size(max = 20) Set<@Pattern(regexp = "[a-z][a-z0-9_]{0,39}") String> statementsTicked,

        @NotNull Map<@NotNull Field, @NotNull FieldState> fieldStates) {

    @AssertTrue(message = "a box that is empty says why: left blank, illegible or refused")
    public boolean isEveryEmptyBoxExplained() {
        if (residence == null || fieldStates == null || statementsTicked == null) {
            return true;
        }
        for (Field field : Field.values()) {
            FieldState state = fieldStates.getOrDefault(field, FieldState.KEYED);
            if (state == FieldState.NOT_YET_KEYED || (state == FieldState.KEYED && isEmpty(field))) {
                return false;
            }
        }
        return true;
    }

    private boolean isEmpty(Field field) {
        return switch (field) {
            case LAST_NAME -> isBlank(lastName);
            case FIRST_NAME -> isBlank(firstName);
            case DATE_OF_BIRTH -> birthDate == null && isBlank(birthDateAsWritten);
            case RESIDENCE_ADDRESS_LINE -> isBlank(residence.line());
            case CITY -> isBlank(residence.city());
            case ZIP -> isBlank(residence.zip());
            case ID_LAST4 -> isBlank(idLast4);
            case STATEMENTS_TICKED -> statementsTicked.isEmpty();
        };
    }

    private static boolean isBlank(@Nullable String text) {
        return text == null || text.isBlank();
    }

    /** The same as the envelope has it. */
    public Envelope.Affirmation affirmation() {
        Map<Field, FieldState> states = new EnumMap<>(Field.class);
        states.putAll(fieldStates);
        states.values().removeIf(state -> state == FieldState.KEYED);
        return new Envelope.Affirmation(
                new PersonName(lastName.strip(), firstName.strip(), middleName.strip(), suffix.strip()),
                formerName.strip(),
                birthDate,
                birthDate == null ? birthDateAsWritten.strip() : "",
                residence.address(),
                former.address(),
                movedOn,
                mailAddress.strip(),
                idLast4,
                driversLicense.strip(),
                phone.strip(),
                email.strip(),
                language.strip(),
                party.strip(),
                statementsTicked,
                Map.copyOf(states));
    }
}
