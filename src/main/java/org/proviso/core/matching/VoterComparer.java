package org.proviso.core.matching;

import java.util.HashMap;
import java.util.Map;
import org.proviso.core.matching.grades.AddressGrade;
import org.proviso.core.matching.grades.BirthPartGrade;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.LicenseGrade;
import org.proviso.core.matching.grades.MiddleGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.grades.SuffixGrade;
import org.proviso.core.matching.grades.SurnameGrade;
import org.proviso.core.matching.index.RollColumns;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.spelling.StreetAddress;
import org.proviso.core.matching.spelling.StreetName;

/** Compares an envelope's person with a voter in all fields. For one thread. */
final class VoterComparer {

    private final RollIndex index;
    private final RollColumns columns;
    private final Map<String, String> bodies = new HashMap<>();

    VoterComparer(RollIndex index) {
        this.index = index;
        this.columns = index.columns();
    }

    /** All grades of a pair whose names have been compared. */
    VoterComparison compare(EnvelopePerson claim, int voter, SurnameGrade surname, GivenGrade given) {
        AddressGrade home = address(claim.home(), claim.zip(), voter);
        AddressGrade former = address(claim.formerHome(), claim.formerZip(), voter);
        boolean byFormer = former.compareTo(home) < 0 && former.compareTo(AddressGrade.SAME_STREET) <= 0;
        return new VoterComparison(
                voter,
                surname,
                given,
                middle(claim, voter, surname, given),
                SuffixGrade.of(claim.name().suffix(), columns.suffix(voter)),
                DateGrade.of(claim.birth(), columns.birth(voter)),
                BirthPartGrade.of(claim.writtenBirth(), columns.birth(voter)),
                NumberGrade.of(claim.last4(), columns.last4(voter)),
                LicenseGrade.of(claim.license(), columns.license(voter)),
                byFormer ? former : home,
                byFormer);
    }

    /** Where a middle name already served as a given name or surname it says nothing more. */
    private MiddleGrade middle(EnvelopePerson claim, int voter, SurnameGrade surname, GivenGrade given) {
        boolean used = surname == SurnameGrade.FORMER || surname == SurnameGrade.SWAPPED || given == GivenGrade.MIDDLE;
        return used
                ? MiddleGrade.UNKNOWN
                : MiddleGrade.of(claim.name().middle(), index.words().middles().text(columns.middle(voter)));
    }

    private AddressGrade address(StreetAddress claimed, int zip, int voter) {
        if (claimed.street().isEmpty() && zip == 0) {
            return AddressGrade.UNKNOWN;
        }
        StreetAddress onRoll = new StreetAddress(
                columns.house(voter),
                "",
                index.words().streets().text(columns.street(voter)),
                index.words().doors().text(columns.door(voter)));
        return AddressGrade.of(claimed, zip, onRoll, columns.zip(voter), this::body);
    }

    private String body(String street) {
        return bodies.computeIfAbsent(street, name -> StreetName.of(name).body());
    }
}
