package org.proviso.intake.keying;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.Envelope;
import org.proviso.core.YesNo;

/** What was shown and signed at the table and in what state the envelope came, as one person keyed it. */
public record KeyedHandling(
        @NotNull YesNo idShown,
        @NotNull @Size(max = 60) String idKind,
        @NotNull @Size(max = 60) String declaration,
        @NotNull YesNo mailBallotSurrendered,
        @NotNull YesNo sentHereByOfficial,
        @NotNull @Size(max = 4000) String officialNote,
        Envelope.@NotNull VoterSignature voterSigned,
        @NotNull YesNo markWitness,
        @NotNull YesNo officialSigned,
        Envelope.@NotNull Condition condition) {

    /** With the picture of the signature that the envelope has, which nobody keys. */
    public Envelope.Handling handling(String signatureImage) {
        return new Envelope.Handling(
                idShown,
                idKind.strip(),
                declaration.strip(),
                mailBallotSurrendered,
                sentHereByOfficial,
                officialNote.strip(),
                voterSigned,
                markWitness,
                officialSigned,
                condition,
                signatureImage);
    }
}
