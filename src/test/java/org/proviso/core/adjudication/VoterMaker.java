package org.proviso.core.adjudication;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Entitlement;
import org.proviso.core.PersonName;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;

/** A voter of 1 Elm St, precinct 1, registered in person in 2015, to be changed for a test. */
final class VoterMaker {

    String id = "V1";
    String street = "Elm St";
    String houseNumber = "1";
    String precinct = "1";
    String split = "";

    @Nullable
    LocalDate born = LocalDate.of(1984, 3, 12);

    @Nullable
    LocalDate registered = LocalDate.of(2015, 5, 4);

    @Nullable
    LocalDate received;

    @Nullable
    RegistrationChannel channel = RegistrationChannel.IN_PERSON;

    RollStatus status = RollStatus.ACTIVE;
    String statusReason = "";

    @Nullable
    LocalDate statusOn;

    Entitlement entitlement = Entitlement.FULL;
    String license = "";
    String party = "";
    YesNo idRequired = YesNo.UNKNOWN;
    YesNo numberMatched = YesNo.UNKNOWN;

    @Nullable
    LocalDate lastVotedOn;

    boolean confidential;

    Voter make() {
        return new Voter(
                new VoterId(id),
                new PersonName("Kell", "Ada", "", ""),
                born,
                new Voter.Residence(houseNumber, street, "", "Millbrook", "49871", precinct, split),
                new Voter.Registration(
                        registered, channel, received, status, statusReason, statusOn, null, entitlement),
                "1234",
                license,
                party,
                null,
                idRequired,
                numberMatched,
                lastVotedOn,
                "",
                confidential,
                "",
                "");
    }
}
