package org.proviso.core.adjudication.finding;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;

/** Which lines of the state's list of people who voted in another county may be about this voter. */
public final class StateListMatches {

    private StateListMatches() {}

    /** Lines with the surname and birth date, or the license, of the envelope or the voter: enough to look, never enough to know. */
    public static List<VotedElsewhere> resembling(
            List<VotedElsewhere> lines, Envelope envelope, Optional<Voter> voter) {
        return lines.stream().filter(line -> resembles(line, envelope, voter)).toList();
    }

    private static boolean resembles(VotedElsewhere line, Envelope envelope, Optional<Voter> voter) {
        Envelope.Affirmation said = envelope.affirmation();
        return same(line, said.name().last(), said.birthDate(), said.driversLicense())
                || voter.map(known -> same(line, known.name().last(), known.birthDate(), known.driversLicense()))
                        .orElse(false);
    }

    private static boolean same(VotedElsewhere line, String last, @Nullable LocalDate birthDate, String license) {
        boolean sameName = line.name().last().equalsIgnoreCase(last)
                && line.birthDate() != null
                && line.birthDate().equals(birthDate);
        return sameName || (!license.isEmpty() && license.equals(line.driversLicense()));
    }
}
