package org.proviso.intake;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope.Condition;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.Envelope.Source;
import org.proviso.core.Envelope.VoterSignature;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.YesNo;
import org.proviso.intake.keying.FinishKeying;
import org.proviso.intake.keying.KeyedAddress;
import org.proviso.intake.keying.KeyedAffirmation;
import org.proviso.intake.keying.KeyedHandling;

/** An envelope by hand, to be changed for a test. */
public final class Keying {

    public static final String NUMBER = "P-2001";
    static final LocalDateTime CAST = LocalDateTime.of(2026, 8, 4, 18, 30);

    public EnvelopeNumber envelopeNo = new EnvelopeNumber(NUMBER);

    @Nullable
    public ReceiptNumber receiptNo = new ReceiptNumber("2222-2222-0");

    @Nullable
    public EnvelopeNumber numberAlsoOn;

    public boolean sharesReceipt;
    String style = "T06-G";
    LocalDateTime receivedAt = CAST.plusHours(4);
    public String lastName = "Kell";

    @Nullable
    public LocalDate birthDate = LocalDate.of(1984, 3, 12);

    public String birthDateAsWritten = "";
    public String officialNote = "";
    public String idLast4 = "1234";
    public int draftVersion;

    @Nullable
    public Integer resolves;

    public final Map<Field, FieldState> states = new EnumMap<>(Field.class);

    public ReceiveEnvelope receive() {
        return new ReceiveEnvelope(
                new ElectionId(LoadedOffice.ID),
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
                receivedAt,
                numberAlsoOn,
                sharesReceipt);
    }

    public FinishKeying finish() {
        KeyedAffirmation said = new KeyedAffirmation(
                lastName,
                " Ada ",
                "",
                "",
                "",
                birthDate,
                birthDateAsWritten,
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
        return new FinishKeying(new ElectionId(LoadedOffice.ID), envelopeNo, draftVersion, said, seen, resolves);
    }
}
