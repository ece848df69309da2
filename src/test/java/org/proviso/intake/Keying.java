package org.proviso.intake;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope.Condition;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.Envelope.Source;
import org.proviso.core.Envelope.VoterSignature;
import org.proviso.core.YesNo;

/** An envelope by hand, to be changed for a test. */
final class Keying {

    static final String NUMBER = "P-2001";
    static final LocalDateTime CAST = LocalDateTime.of(2026, 8, 4, 18, 30);

    String envelopeNo = NUMBER;
    String receiptNo = "2222-2222-0";
    String style = "T06-G";
    LocalDateTime receivedAt = CAST.plusHours(4);
    String lastName = "Kell";
    String officialNote = "";
    String idLast4 = "1234";
    int draftVersion;

    @Nullable
    Integer resolves;

    final Map<Field, FieldState> states = new EnumMap<>(Field.class);

    ReceiveEnvelope receive() {
        return new ReceiveEnvelope(
                LoadedOffice.ID,
                envelopeNo,
                receiptNo,
                Source.POLL,
                "Library",
                "301",
                style,
                "Granite",
                CAST,
                YesNo.NO,
                YesNo.UNKNOWN,
                Set.of("not_on_list"),
                receivedAt);
    }

    FinishKeying finish() {
        KeyedAffirmation said = new KeyedAffirmation(
                lastName,
                " Ada ",
                "",
                "",
                "",
                LocalDate.of(1984, 3, 12),
                new KeyedAddress("1 Elm St", "", "Millbrook", "49871"),
                KeyedAddress.NONE,
                null,
                "",
                idLast4,
                "",
                "",
                "",
                "en",
                "Granite",
                Set.of("citizen", "resident"),
                states);
        KeyedHandling seen = new KeyedHandling(
                YesNo.YES,
                "drivers_license",
                "",
                YesNo.UNKNOWN,
                YesNo.NO,
                officialNote,
                VoterSignature.YES,
                YesNo.UNKNOWN,
                YesNo.YES,
                Condition.SEALED);
        return new FinishKeying(LoadedOffice.ID, envelopeNo, draftVersion, said, seen, resolves);
    }
}
