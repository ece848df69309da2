package org.proviso.intake;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.PersonName;
import org.proviso.core.YesNo;

/** What an envelope says that was received and of which nothing was keyed: nothing, and each box says so. */
public final class UnkeyedEnvelope {

    static final Envelope.Affirmation AFFIRMATION = new Envelope.Affirmation(
            new PersonName("", "", "", ""),
            "",
            null,
            "",
            Address.NONE,
            Address.NONE,
            null,
            "",
            "",
            "",
            "",
            "",
            "",
            "",
            Set.of(),
            everyBox());

    static final Envelope.Handling HANDLING = new Envelope.Handling(
            YesNo.UNKNOWN,
            "",
            "",
            YesNo.UNKNOWN,
            YesNo.UNKNOWN,
            "",
            Envelope.VoterSignature.UNKNOWN,
            YesNo.UNKNOWN,
            YesNo.UNKNOWN,
            Envelope.Condition.UNKNOWN,
            "");

    private UnkeyedEnvelope() {}

    private static Map<Field, FieldState> everyBox() {
        Map<Field, FieldState> states = new EnumMap<>(Field.class);
        for (Field field : Field.values()) {
            states.put(field, FieldState.NOT_YET_KEYED);
        }
        return Collections.unmodifiableMap(states);
    }

    /** Whether nothing was keyed. */
    public static boolean isAllOf(Envelope envelope) {
        return envelope.affirmation().fieldStates().equals(AFFIRMATION.fieldStates());
    }

    /** Whether there is still something to key. */
    public static boolean isSomeOf(Envelope envelope) {
        return envelope.affirmation().fieldStates().containsValue(FieldState.NOT_YET_KEYED);
    }
}
