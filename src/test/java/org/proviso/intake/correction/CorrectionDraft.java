package org.proviso.intake.correction;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.YesNo;
import org.proviso.intake.keying.KeyedAddress;
import org.proviso.intake.keying.KeyedAffirmation;
import org.proviso.intake.keying.KeyedHandling;

/** A correction by hand, which leaves an envelope as it is until it is changed for a test. */
public final class CorrectionDraft {

    private final ElectionId electionId;
    private final Envelope envelope;
    public int version;
    public String votingLocation;
    public String style;
    public YesNo extendedHours;
    public Set<String> issueReasons;
    public String lastName;
    public String firstName;

    @Nullable
    public LocalDate birthDate;

    public Address residence;
    public String idLast4;
    public String phone;
    public Envelope.VoterSignature voterSigned;
    public boolean keyed = true;
    public String because = "Read again from the paper.";

    public CorrectionDraft(ElectionId electionId, CorrectableEnvelope seen) {
        this.electionId = electionId;
        this.envelope = seen.envelope();
        this.version = seen.version();
        this.votingLocation = envelope.cast().votingLocation();
        this.style = envelope.cast().ballotStyle();
        this.extendedHours = envelope.cast().extendedHours();
        this.issueReasons = envelope.cast().issueReasons();
        this.lastName = envelope.affirmation().name().last();
        this.firstName = envelope.affirmation().name().first();
        this.birthDate = envelope.affirmation().birthDate();
        this.residence = envelope.affirmation().residence();
        this.idLast4 = envelope.affirmation().idLast4();
        this.phone = envelope.affirmation().phone();
        this.voterSigned = envelope.handling().voterSigned();
    }

    public CorrectEnvelope command() {
        Envelope.Cast cast = envelope.cast();
        return new CorrectEnvelope(
                electionId,
                envelope.envelopeNo(),
                version,
                new CorrectedCast(
                        votingLocation,
                        cast.precinct(),
                        style,
                        cast.partyBallot(),
                        cast.at(),
                        extendedHours,
                        cast.inLineAtClose(),
                        issueReasons),
                keyed ? said(envelope.affirmation()) : null,
                keyed ? seen(envelope.handling()) : null,
                because);
    }

    private KeyedAffirmation said(Envelope.Affirmation said) {
        return new KeyedAffirmation(
                lastName,
                firstName,
                said.name().middle(),
                said.name().suffix(),
                said.formerName(),
                birthDate,
                said.birthDateAsWritten(),
                address(residence),
                address(said.former()),
                said.movedOn(),
                said.mailAddress(),
                idLast4,
                said.driversLicense(),
                phone,
                said.email(),
                said.language(),
                said.party(),
                said.statementsTicked(),
                said.fieldStates());
    }

    private static KeyedAddress address(Address address) {
        return new KeyedAddress(address.line(), address.unit(), address.city(), address.zip());
    }

    private KeyedHandling seen(Envelope.Handling seen) {
        return new KeyedHandling(
                seen.idShown(),
                seen.idKind(),
                seen.declaration(),
                seen.mailBallotSurrendered(),
                seen.sentHereByOfficial(),
                seen.officialNote(),
                voterSigned,
                seen.markWitness(),
                seen.officialSigned(),
                seen.condition());
    }
}
