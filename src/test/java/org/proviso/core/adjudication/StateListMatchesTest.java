package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.PersonName;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.finding.StateListMatches;

/** The envelope and the roll are of Ada Kell, born March 12, 1984; the roll has her license. */
class StateListMatchesTest {

    private final EnvelopeMaker envelope = new EnvelopeMaker();
    private final VoterMaker voter = new VoterMaker();

    @ParameterizedTest
    @CsvSource({
        "Kell, 1984-03-12, '', true",
        "KELL, 1984-03-12, '', true",
        "Kell, 1984-03-13, '', false",
        "Kell, , '', false",
        "Kelly, 1984-03-12, '', false",
        "Moss, 1990-01-01, D-100, true",
        "Moss, 1990-01-01, D-101, false"
    })
    void a_line_resembles_by_surname_and_birth_date_or_by_license(
            String last, LocalDate born, String license, boolean resembles) {
        voter.license = "D-100";
        assertThat(resembles(line(last, born, license), Optional.of(voter.make())))
                .isEqualTo(resembles);
    }

    @Test
    void a_line_may_resemble_what_the_envelope_says_or_what_the_roll_says() {
        VotedElsewhere line = line("Kell", LocalDate.of(1984, 3, 12), "");
        voter.born = LocalDate.of(1990, 1, 1);
        assertThat(resembles(line, Optional.of(voter.make())))
                .as("the envelope")
                .isTrue();
        assertThat(resembles(line, Optional.empty())).as("without a voter").isTrue();
        voter.born = envelope.born;
        envelope.born = null;
        assertThat(resembles(line, Optional.of(voter.make()))).as("the roll").isTrue();
        assertThat(resembles(line, Optional.empty())).as("neither").isFalse();
    }

    @Test
    void a_birth_date_that_neither_gives_is_no_resemblance() {
        envelope.born = null;
        voter.born = null;
        assertThat(resembles(line("Kell", null, ""), Optional.of(voter.make()))).isFalse();
    }

    private boolean resembles(VotedElsewhere line, Optional<Voter> known) {
        List<VotedElsewhere> found = StateListMatches.resembling(List.of(line), envelope.make(), known);
        return found.equals(List.of(line));
    }

    private static VotedElsewhere line(String last, LocalDate born, String license) {
        return new VotedElsewhere(new PersonName(last, "Ada", "", ""), born, "", license, "Alder", "in person", null);
    }
}
