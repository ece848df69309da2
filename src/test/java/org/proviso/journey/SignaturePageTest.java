package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.pressOnCase;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.value;

import com.vaadin.flow.component.html.Image;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.facts.LinkStore;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChangedMeanwhile;
import org.springframework.beans.factory.annotation.Autowired;

/** The page on which one signature is compared with those on file. */
@OnPages
class SignaturePageTest {

    private static final String AUSTIN = "T7492637";
    private static final String NATHAN = "T6142054";

    @Autowired
    private PageDriver pages;

    private static SignatureComparisonFact compared(EnvelopeKey key) {
        return PagesOffice.file(key).report().presumed().facts().one(Fact.SIGNATURE_COMPARISON);
    }

    private static void returnedAndTakenAgain(EnvelopeKey key) {
        CaseAssignmentService cases = PagesOffice.the(CaseAssignmentService.class);
        PagesOffice.done("ada", () -> cases.giveBack(key, PagesOffice.version(key)));
        PagesOffice.done("ada", () -> cases.take(key, PagesOffice.version(key)));
    }

    private static List<String> pictures() {
        return _find(Image.class).stream().map(Image::getSrc).toList();
    }

    @Test
    void what_was_ticked_and_typed_outlasts_a_change_of_the_case() {
        EnvelopeKey key = PagesOffice.linked("P-1031");
        pages.on("review/signature/P-1031", "ada", () -> {
            assertThat(said()).contains("Zoom all", "Envelope's signature over the one on file");
            assertThat(_find(ActButton.class))
                    .as("no answer is preset")
                    .noneMatch(button -> button.hasClassName("first"));
            fill("What differs", Set.of("slant", "spacing"));
            fill("Note", "The last stroke rises.");
            returnedAndTakenAgain(key);
            pressOnCase("Signature differs");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(value("Note")).isEqualTo("The last stroke rises.");
            assertThat(compared(key)).isEqualTo(SignatureComparisonFact.NOT_YET);
            press("Load the new version");
            assertThat(said()).doesNotContain(ChangedMeanwhile.WORDS);
            assertThat(value("Note")).isEqualTo("The last stroke rises.");
            assertThat(value("What differs")).isEqualTo(Set.of("slant", "spacing"));
            pressOnCase("Signature differs");
        });
        assertThat(compared(key)).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        assertThat(PagesOffice.file(key).work().answers())
                .extracting(answer -> answer.reason())
                .containsExactly("slant, spacing. The last stroke rises.");
    }

    @Test
    void a_signature_of_the_pile_keeps_what_was_typed_where_somebody_else_took_it() {
        pages.on("review/signatures", "ada", () -> {
            EnvelopeKey key = onTheScreen();
            fill("Note", "Nothing but haste.");
            PagesOffice.done(
                    "ben", () -> PagesOffice.the(CaseAssignmentService.class).take(key, PagesOffice.version(key)));
            pressOnCase("Signature agrees");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(value("Note")).isEqualTo("Nothing but haste.");
            PagesOffice.done(
                    "ben", () -> PagesOffice.the(CaseAssignmentService.class).giveBack(key, PagesOffice.version(key)));
            press("Load the new version");
            assertThat(value("Note")).as("it is the next again").isEqualTo("Nothing but haste.");
            press("Skip this signature");
            assertThat(value("Note")).as("another signature begins empty").isEqualTo("");
        });
    }

    /** The next of the pile, whichever other tests left. */
    private static EnvelopeKey onTheScreen() {
        Matcher picture =
                Pattern.compile("/images/tamarack-primary/(P-\\d{4})/signature").matcher(String.join(" ", pictures()));
        assertThat(picture.find()).isTrue();
        return PagesOffice.key(picture.group(1));
    }

    @Test
    void the_signatures_of_both_who_may_be_the_voter_stand_in_rows_of_their_own() {
        EnvelopeKey key = PagesOffice.taken("P-1033");
        int snapshot = PagesOffice.the(RollService.class).snapshotInUse(PagesOffice.ELECTION, SnapshotKind.ROLL);
        Link several = new Link(
                VoterIdentityFact.SEVERAL_FIT,
                null,
                0.6,
                List.of("Two records fit about equally."),
                List.of(
                        new Candidate(new VoterId(AUSTIN), 0.6, List.of()),
                        new Candidate(new VoterId(NATHAN), 0.39, List.of())));
        PagesOffice.the(LinkStore.class).insert(key, several, snapshot, null, "");
        pages.on("review/signature/P-1033", "ada", () -> {
            assertThat(said())
                    .containsPattern("Envelope: .* \u00B7 \\d\\d/\\d\\d/\\d{4} \u00B7 ")
                    .contains("Record A" + AUSTIN + "Frazier, Austin E\u2260 differs")
                    .contains("Record B" + NATHAN + "Frazier, Nathan Mark\u2260 differs")
                    .contains("laid over the one on file: 1 of 2, Record A");
            assertThat(pictures())
                    .contains("/images/tamarack-primary/P-1033/of/" + AUSTIN + "/1")
                    .contains("/images/tamarack-primary/P-1033/of/" + NATHAN + "/0");
            press("Overlay: 1 of");
            assertThat(said()).containsPattern("laid over the one on file: 1 of \\d, Record B");
            pressOnCase("Signature agrees");
            assertThat(said()).contains("Choose the voter first");
        });
        assertThat(PagesOffice.file(key).work().answers()).isEmpty();
    }
}
