package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.MailBallot;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** Of whom the mail desk is asked to refuse a mail ballot. */
class MailBallotGivesWayTest {

    private static final ResolvedPack LISTED =
            example().flag(Rules.COUNTED_LIST_TO_MAIL_DESK, true).resolved();

    private static ChangedPack example() {
        return ChangedPack.of("example");
    }

    private static ResolvedPack givesWay(Basis basis) {
        return example()
                .with(Rules.MAIL_RETURNED, new RuleValue.Word("gives_way"), basis)
                .resolved();
    }

    @Test
    void no_pack_asks_it_that_does_not_say_so() {
        assertThat(MailBallotGivesWay.isEverAsked(example().resolved())).isFalse();
        assertThat(MailBallotGivesWay.isEverAsked(LISTED)).isTrue();
        assertThat(MailBallotGivesWay.isEverAsked(givesWay(Basis.READ))).isTrue();
        assertThat(MailBallotGivesWay.isEverAsked(givesWay(Basis.MEMORY)))
                .as("only by a rule somebody read or signed")
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "outstanding, true, false",
        "returned, true, true",
        "cure_pending, true, false",
        "accepted, false, false",
        "rejected, false, false",
        "surrendered, false, false",
        "late, false, false",
        "void, false, false",
        "undeliverable, false, false"
    })
    void it_is_asked_while_the_mail_ballot_is_undecided(String state, boolean listed, boolean givesWay) {
        MailBallotFact word = MailBallotFact.valueOf(state.toUpperCase(java.util.Locale.ROOT));
        assertThat(MailBallotGivesWay.isAsked(LISTED, EnumSet.of(word))).isEqualTo(listed);
        assertThat(MailBallotGivesWay.isAsked(givesWay(Basis.READ), EnumSet.of(word)))
                .isEqualTo(givesWay);
        assertThat(MailBallotGivesWay.isAsked(example().resolved(), EnumSet.of(word)))
                .isFalse();
        assertThat(MailBallotGivesWay.isUndecided(MailBallot.State.valueOf(word.name())))
                .isEqualTo(listed);
    }

    @Test
    void nobody_is_listed_who_has_no_mail_ballot_or_of_whom_nothing_is_known() {
        assertThat(MailBallotGivesWay.isAsked(LISTED, Set.of())).isFalse();
        assertThat(MailBallotGivesWay.isAsked(LISTED, null)).isFalse();
    }
}
