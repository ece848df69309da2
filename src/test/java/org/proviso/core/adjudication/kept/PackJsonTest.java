package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.CountyRuling;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.files.packs.RulePacks;

/** A pack that is kept comes back as it was, with its hash. */
class PackJsonTest {

    private static final CountyRuling GIVES =
            new CountyRuling("moves.within_county", "either", "A. \"Ann\" Reyes", LocalDate.of(2026, 10, 1), "letter");
    private static final CountyRuling CONFIRMS =
            new CountyRuling("signature.compared", "", "B. Ortiz", LocalDate.of(2026, 10, 2), "letter");

    @Test
    void bundled_packs_come_back_with_their_hash_and_every_word() {
        for (String name : RulePacks.bundled()) {
            for (String day : List.of("2004-11-02", "2026-08-04", "2026-11-03")) {
                ResolvedPack pack = PackResolver.resolve(RulePacks.load(name), LocalDate.parse(day), List.of());
                comesBack(pack);
            }
            comesBack(ChangedPack.of(name).resolved(GIVES, CONFIRMS));
        }
    }

    private static void comesBack(ResolvedPack pack) {
        ResolvedPack back = PackJson.read(PackJson.write(pack));
        assertThat(back.hash()).isEqualTo(pack.hash());
        assertThat(back.all()).isEqualTo(pack.all());
        assertThat(back.electionDate()).isEqualTo(pack.electionDate());
        assertThat(back.pack().id()).isEqualTo(pack.pack().id());
        assertThat(back.pack().name()).isEqualTo(pack.pack().name());
        assertThat(back.pack().caution()).isEqualTo(pack.pack().caution());
        assertThat(back.pack().illustrative()).isEqualTo(pack.pack().illustrative());
        assertThat(back.pack().reasons()).isEqualTo(pack.pack().reasons());
        assertThat(PackJson.write(back)).isEqualTo(PackJson.write(pack));
        assertThat(DeadlineBook.of(back, Set.of()).calendar())
                .isEqualTo(DeadlineBook.of(pack, Set.of()).calendar());
        for (Rule rule : Rule.all()) {
            assertThat(DeadlineBook.of(back, Set.of()).of(rule))
                    .isEqualTo(DeadlineBook.of(pack, Set.of()).of(rule));
        }
    }

    @Test
    void who_signed_a_ruling_is_kept() {
        ResolvedPack back =
                PackJson.read(PackJson.write(ChangedPack.of("example").resolved(GIVES)));
        assertThat(back.of(Rules.MOVES).signedBy()).isEqualTo("A. \"Ann\" Reyes");
        assertThat(back.of(Rules.MOVES).basis()).isEqualTo(Basis.RULED);
    }

    @Test
    void every_kind_of_value_comes_back() {
        Set<Class<?>> seen = new HashSet<>();
        for (RuleValue value : RuleValues.every()) {
            ResolvedPack pack =
                    ChangedPack.of("us").with(Rules.BURDEN, value, Basis.MEMORY).resolved();
            ResolvedPack back = PackJson.read(PackJson.write(pack));
            assertThat(back.of(Rules.BURDEN)).isEqualTo(pack.of(Rules.BURDEN));
            assertThat(back.hash()).isEqualTo(pack.hash());
            seen.add(value.getClass());
        }
        assertThat(seen).containsExactlyInAnyOrder(RuleValue.class.getPermittedSubclasses());
    }

    @Test
    void a_rule_that_an_older_text_does_not_have_is_unknown() {
        String text = PackJson.write(ChangedPack.of("example").resolved());
        ResolvedPack pack = ChangedPack.of("example").resolved();
        ResolvedPack older = PackResolver.asGiven(
                pack.pack(),
                pack.electionDate(),
                pack.all().stream()
                        .filter(given -> !given.rule().equals(Rules.BURDEN))
                        .toList());
        ResolvedPack back = PackJson.read(PackJson.write(older));
        assertThat(back.of(Rules.BURDEN).isKnown()).isFalse();
        assertThat(back.hash()).isEqualTo(older.hash()).isNotEqualTo(pack.hash());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PackJson.read(text.replace("decider.burden_of_proof", "decider.burden_of_doubt")))
                .withMessageContaining("decider.burden_of_doubt");
    }

    @Test
    void a_text_that_is_no_pack_is_refused_with_what_is_wrong() {
        String text = PackJson.write(ChangedPack.of("example").resolved());
        assertThatIllegalArgumentException().isThrownBy(() -> PackJson.read(text.substring(1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PackJson.read("{}"))
                .withMessage("\"id\" is missing or has the wrong type");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PackJson.read(text.replace("\"basis\":\"read\"", "\"basis\":\"heard\"")))
                .withMessageContaining("heard");
    }
}
