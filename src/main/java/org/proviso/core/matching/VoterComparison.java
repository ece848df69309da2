package org.proviso.core.matching;

import org.proviso.core.matching.grades.AddressGrade;
import org.proviso.core.matching.grades.BirthPartGrade;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.LicenseGrade;
import org.proviso.core.matching.grades.MiddleGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.grades.SuffixGrade;
import org.proviso.core.matching.grades.SurnameGrade;

/** All grades between one envelope and one voter; {@code byFormerAddress} says which of the envelope's addresses agreed. */
record VoterComparison(
        int voter,
        SurnameGrade surname,
        GivenGrade given,
        MiddleGrade middle,
        SuffixGrade suffix,
        DateGrade date,
        BirthPartGrade birthPart,
        NumberGrade last4,
        LicenseGrade license,
        AddressGrade address,
        boolean byFormerAddress) {

    /** The same for a voter whose place comes after so many others. */
    VoterComparison after(int others) {
        return new VoterComparison(
                voter + others,
                surname,
                given,
                middle,
                suffix,
                date,
                birthPart,
                last4,
                license,
                address,
                byFormerAddress);
    }

    /** The same for a voter at another place. */
    VoterComparison at(int place) {
        return after(place - voter);
    }

    /** Whether a number that only one person has is the same on both papers. */
    boolean sameNumber() {
        return last4 == NumberGrade.SAME || license == LicenseGrade.SAME;
    }

    boolean namesAgree() {
        return (surname == SurnameGrade.EXACT || surname == SurnameGrade.SWAPPED)
                && (given == GivenGrade.EXACT || given == GivenGrade.NICKNAME || given == GivenGrade.SWAPPED);
    }
}
