package org.proviso.core.adjudication;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.YesNo;

/** An envelope in good order, cast at the Library at 2 pm with style A, to be changed for a test. */
final class EnvelopeMaker {

    String number = "E-1";
    Envelope.Source source = Envelope.Source.POLL;
    String place = "Library";
    String style = "A";
    String partyBallot = "";

    @Nullable
    LocalDateTime at = LocalDateTime.of(2026, 11, 3, 14, 0);

    YesNo extended = YesNo.NO;
    YesNo inLine = YesNo.UNKNOWN;
    Set<String> issueReasons = Set.of("not_on_list");
    PersonName name = new PersonName("Kell", "Ada", "", "");

    @Nullable
    LocalDate born = LocalDate.of(1984, 3, 12);

    String bornAsWritten = "";

    String address = "1 Elm St";
    String city = "Millbrook";
    String zip = "49871";
    Address former = Address.NONE;

    @Nullable
    LocalDate movedOn;

    String idLast4 = "1234";
    Set<String> ticked = Set.of("registered", "eligible");
    Map<Envelope.Field, Envelope.FieldState> states = new LinkedHashMap<>();
    YesNo idShown = YesNo.YES;
    String idKind = "";
    String declaration = "";
    YesNo surrendered = YesNo.UNKNOWN;
    YesNo sentByOfficial = YesNo.NO;
    String note = "";
    Envelope.VoterSignature signed = Envelope.VoterSignature.YES;
    YesNo witness = YesNo.UNKNOWN;
    YesNo officialSigned = YesNo.YES;
    Envelope.Condition condition = Envelope.Condition.SEALED;

    Envelope make() {
        return new Envelope(
                new EnvelopeNumber(number),
                new ReceiptNumber("R-" + number),
                source,
                new Envelope.Cast(place, "1", style, partyBallot, at, extended, inLine, issueReasons),
                new Envelope.Affirmation(
                        name,
                        "",
                        born,
                        bornAsWritten,
                        new Address(address, "", city, zip),
                        former,
                        movedOn,
                        "",
                        idLast4,
                        "",
                        "",
                        "",
                        "",
                        "",
                        ticked,
                        Map.copyOf(states)),
                new Envelope.Handling(
                        idShown,
                        idKind,
                        declaration,
                        surrendered,
                        sentByOfficial,
                        note,
                        signed,
                        witness,
                        officialSigned,
                        condition,
                        ""));
    }
}
