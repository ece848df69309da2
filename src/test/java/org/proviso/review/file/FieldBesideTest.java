package org.proviso.review.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.proviso.core.Address;
import org.proviso.core.Entitlement;
import org.proviso.core.Envelope;
import org.proviso.core.PersonName;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.review.file.FieldBeside.Likeness;

class FieldBesideTest {

    private static final LocalDate BORN = LocalDate.of(1984, 3, 12);

    private static Envelope.Affirmation said(PersonName name, @Nullable LocalDate born, Address home) {
        return new Envelope.Affirmation(
                name, "", born, "", home, Address.NONE, null, "", "", "", "", "", "", "", Set.of(), Map.of());
    }

    private static Voter record(@Nullable LocalDate born, String unit) {
        return new Voter(
                new VoterId("V1"),
                new PersonName("O'Kell", "Ada", "", ""),
                born,
                new Voter.Residence("1", "N Elm St", unit, "Millbrook", "49871", "1", ""),
                new Voter.Registration(null, null, null, RollStatus.ACTIVE, "", null, null, Entitlement.FULL),
                "",
                "",
                "",
                null,
                YesNo.UNKNOWN,
                YesNo.UNKNOWN,
                null,
                "",
                true,
                "",
                "");
    }

    private static List<Likeness> likeness(Envelope.Affirmation said, Voter voter) {
        return FieldBeside.of(said, voter, false).stream()
                .map(FieldBeside::likeness)
                .toList();
    }

    @Test
    void what_only_looks_different_is_the_same() {
        assertThat(likeness(
                        said(
                                new PersonName("OKELL", "ada", "", ""),
                                BORN,
                                new Address("1 North Elm Street", "", "", "")),
                        record(BORN, "Apt 2")))
                .containsExactly(Likeness.SAME, Likeness.SAME, Likeness.SAME);
    }

    @Test
    void another_name_day_or_unit_differs() {
        assertThat(likeness(
                        said(
                                new PersonName("O'Kell", "Eva", "", ""),
                                BORN.plusDays(1),
                                new Address("1 N Elm St", "Apt 3", "", "")),
                        record(BORN, "Apt 2")))
                .containsExactly(Likeness.DIFFERS, Likeness.DIFFERS, Likeness.DIFFERS);
    }

    @Test
    void what_one_of_them_does_not_say_is_not_compared() {
        assertThat(likeness(said(new PersonName("", "", "", ""), BORN, Address.NONE), record(null, "")))
                .containsExactly(Likeness.NOT_COMPARED, Likeness.NOT_COMPARED, Likeness.NOT_COMPARED);
        assertThat(likeness(
                        said(new PersonName("O'Kell", "Ada", "", ""), BORN, Address.NONE),
                        record(LocalDate.of(1900, 1, 1), "")))
                .as("a roll's placeholder is no date of birth")
                .containsExactly(Likeness.SAME, Likeness.NOT_COMPARED, Likeness.NOT_COMPARED);
    }

    @Test
    void a_protected_address_is_on_neither_side_before_the_voter_is_settled() {
        FieldBeside home = FieldBeside.of(
                        said(new PersonName("O'Kell", "Ada", "", ""), BORN, new Address("1 N Elm St", "", "", "")),
                        record(BORN, ""),
                        true)
                .get(2);
        assertThat(List.of(home.onEnvelope(), home.onRecord()))
                .containsExactly("protected address", "protected address");
        assertThat(home.likeness()).isEqualTo(Likeness.SAME);
    }
}
