package org.proviso.core.matching.index;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.PersonName;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;

/** What the index needs of one roll record, as the file spells it. What is not given is empty, an unknown date null. */
public record RollEntry(
        VoterId voterId,
        PersonName name,
        String formerName,
        @Nullable LocalDate birthDate,
        String houseNumber,
        String street,
        String unit,
        String zip,
        String idLast4,
        String driversLicense) {

    public static RollEntry of(Voter voter) {
        Voter.Residence home = voter.residence();
        return new RollEntry(
                voter.voterId(),
                voter.name(),
                voter.formerName(),
                voter.birthDate(),
                home.houseNumber(),
                home.street(),
                home.unit(),
                home.zip(),
                voter.idLast4(),
                voter.driversLicense());
    }
}
