package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Rules;

/**
 * 52 USC 21083(b) under the federal floor as the real loader reads it: who registered by mail and has not voted in a
 * federal election in the state shows identification, unless the number was matched.
 */
class FederalIdentificationTest {

    private final SmallCase small = new SmallCase();

    @BeforeEach
    void nobody_showed_identification_under_the_federal_floor() {
        small.pack = ChangedPack.of("us");
        small.envelope.idShown = YesNo.NO;
    }

    @ParameterizedTest
    @CsvSource({
        // 21083(b)(1): registered by mail, never voted before, as the roll's flag says.
        "MAIL, YES, UNKNOWN, , missing",
        // No flag and no last vote: never voted, or a roll that does not say. A person must look.
        "MAIL, UNKNOWN, UNKNOWN, , unknown",
        // 21083(b)(1)(B): voted in a federal election in the state before.
        "MAIL, UNKNOWN, UNKNOWN, 2022-11-08, not_required",
        // 21083(b)(3)(B): the number was matched (decision case US-02).
        "MAIL, UNKNOWN, YES, , not_required",
        "MAIL, YES, YES, , not_required",
        "MAIL, UNKNOWN, NO, , unknown",
        "MAIL, YES, NO, , missing",
        // The roll's own word on it.
        "MAIL, NO, UNKNOWN, , not_required",
        "IN_PERSON, YES, UNKNOWN, , missing",
        // Every other channel.
        "IN_PERSON, UNKNOWN, UNKNOWN, , not_required",
        "ONLINE, UNKNOWN, NO, , not_required",
        "MOTOR_VEHICLE, UNKNOWN, UNKNOWN, , not_required",
        "AGENCY, UNKNOWN, UNKNOWN, , not_required",
        // The roll does not say how the voter registered.
        ", UNKNOWN, UNKNOWN, , unknown"
    })
    void asks_it_of_first_time_voters_who_registered_by_mail(
            RegistrationChannel channel, YesNo required, YesNo matched, LocalDate lastVoted, String word) {
        small.voter.channel = channel;
        small.voter.idRequired = required;
        small.voter.numberMatched = matched;
        small.voter.lastVotedOn = lastVoted;

        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo(word);
    }

    @Test
    void is_met_by_identification_shown_whoever_the_voter_is() {
        small.envelope.idShown = YesNo.YES;
        small.envelope.idKind = "utility_bill";
        small.noVoter();
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("shown");
        assertThat(small.evidence(Fact.IDENTIFICATION)).isEqualTo("Identification was shown: utility bill.");
    }

    @Test
    void cannot_be_told_of_nobody_nor_where_nobody_noted_what_was_shown() {
        small.voter.channel = RegistrationChannel.MAIL;
        small.envelope.idShown = YesNo.UNKNOWN;
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("unknown");
        small.noVoter();
        small.envelope.idShown = YesNo.NO;
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("unknown");
    }

    @ParameterizedTest
    @CsvSource({"nobody, not_required", "everyone, missing"})
    void may_be_asked_of_nobody_or_of_everyone_by_a_state(String rule, String word) {
        small.pack.word(Rules.ID_REQUIRED_OF, rule);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo(word);
    }

    @Test
    void is_open_where_nobody_could_source_whom_the_law_asks() {
        small.pack.without(Rules.ID_REQUIRED_OF);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("unknown");
    }

    @Test
    void is_excused_by_a_declaration_only_where_the_law_accepts_one() {
        small.pack.word(Rules.ID_REQUIRED_OF, "everyone");
        small.envelope.declaration = "reasonable_impediment";
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("unknown");
        small.pack.flag(Rules.DECLARATION_EXCUSES, false);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("missing");
        small.pack.flag(Rules.DECLARATION_EXCUSES, true);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("excused");
        assertThat(small.evidence(Fact.IDENTIFICATION)).contains("reasonable impediment");
        small.envelope.declaration = "";
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("missing");
    }

    /** 21083(b)(2)(B): the ballot is provisional; no federal rule rejects it, so the floor leaves it open. */
    @Test
    void rejects_nobody_by_the_federal_floor_alone() {
        small.voter.channel = RegistrationChannel.MAIL;
        assertThat(small.report(LocalDateTime.of(2027, 1, 1, 12, 0))
                        .outlook()
                        .outcome()
                        .recommendation())
                .isEqualTo(Recommendation.RESEARCH);
    }
}
