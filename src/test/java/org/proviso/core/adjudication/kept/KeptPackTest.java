package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.CountyRuling;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** One pack that is kept: every kind of value, who signed, and what is refused; the bundled packs have a test of their own. */
class KeptPackTest {

    private static final CountyRuling GIVES =
            new CountyRuling("moves.within_county", "either", "A. \"Ann\" Reyes", LocalDate.of(2026, 10, 1), "letter");

    @Test
    void a_pack_comes_back_with_its_hash_and_the_sentences_the_voter_reads() {
        ResolvedPack pack = ChangedPack.of("example").resolved(GIVES);
        ResolvedPack back = PackJson.read(PackJson.write(pack));
        assertThat(back.hash()).isEqualTo(pack.hash());
        assertThat(back.all()).isEqualTo(pack.all());
        assertThat(back.pack().reasons()).isEqualTo(pack.pack().reasons()).isNotEmpty();
        assertThat(back.pack().illustrative()).isTrue();
        assertThat(PackJson.read(PackJson.write(ChangedPack.of("us").resolved()))
                        .pack()
                        .illustrative())
                .isFalse();
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
            String text = CanonicalJson.of(RuleValueJson.write(value));
            assertThat(RuleValueJson.read(new KeptFields(CanonicalJsonReader.object(text))))
                    .isEqualTo(value);
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
