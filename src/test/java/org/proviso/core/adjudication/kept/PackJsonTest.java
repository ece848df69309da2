package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.CountyRuling;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.files.packs.RulePacks;

/** Every bundled pack that is kept comes back as it was, with its hash; {@link KeptPackTest} has the parts of one. */
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
}
