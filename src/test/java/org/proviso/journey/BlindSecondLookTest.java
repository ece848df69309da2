package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.pressOnCase;
import static org.proviso.journey.PageDriver.said;

import com.github.mvysny.kaributesting.v10.LocatorJ;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.router.QueryParameters;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.facts.SignatureComparison;
import org.springframework.beans.factory.annotation.Autowired;

/** Ben opens every page there is while a signature waits for his look, and reads no word of what Ada found. */
@OnPages
class BlindSecondLookTest {

    /** What is seen of the envelope on pages whose address ends with it, or with something else. */
    private static final Map<String, String> OF_THE_ENVELOPE = Map.of(
            "review/case", "review/case/P-1018",
            "review/signature", "review/signature/P-1018",
            "review/print", "review/print/P-1018",
            "review/second", "review/second/P-1018",
            "intake/correct", "intake/correct/P-1018",
            "intake/key", "intake/key/P-1018",
            "notices/letter/:envelope/:number([0-9]{1,6})", "notices");

    private static final String NOTE = "The loops lean the other way.";

    @Autowired
    private PageDriver pages;

    private static EnvelopeKey foundDifferentByAda(String envelopeNo) {
        EnvelopeKey key = PagesOffice.linked(envelopeNo);
        PagesOffice.done(
                "ada",
                () -> PagesOffice.the(AnswerService.class)
                        .recordSignatureComparison(new SignatureComparison(
                                key, PagesOffice.version(key), SignatureComparison.Finding.DIFFERS, NOTE)));
        return key;
    }

    /** Every page that a reviewer may open. */
    private static List<String> doors() throws IOException {
        try (var in = Objects.requireNonNull(BlindSecondLookTest.class.getResourceAsStream("/permissions/pages.txt"))) {
            List<String> doors = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                String[] parts = line.split(" = ");
                // the rules in force, the guides and the words are about no envelope, and say what a second look is
                boolean ofCases = !line.startsWith("#")
                        && !line.startsWith("/")
                        && !line.startsWith("help/")
                        && !parts[0].equals("set-up/rules");
                if (ofCases && parts[1].contains("reviewer")) {
                    doors.add(parts[0].equals("(start)") ? "" : OF_THE_ENVELOPE.getOrDefault(parts[0], parts[0]));
                }
            }
            return doors;
        }
    }

    private void tellsNothing(String door) {
        pages.on("calendar", "ben", () -> {
            UI.getCurrent().navigate(door, QueryParameters.of("for", "P-1018"));
            assertThat(UI.getCurrent().getInternals().getActiveViewLocation().getPath())
                    .isEqualTo(door);
            LocatorJ._find(NativeDetails.class).forEach(details -> details.setOpen(true));
            assertThat(said())
                    .as(door)
                    .doesNotContain(NOTE)
                    .doesNotContain("found the signature different")
                    .doesNotContain("found it different")
                    .doesNotContain("independent")
                    .doesNotContain("second signature")
                    .doesNotContain("Compared before")
                    .doesNotContain("Withdraw comparison");
        });
    }

    @Test
    void no_page_says_a_word_of_the_first_finding() throws IOException {
        EnvelopeKey key = foundDifferentByAda("P-1018");
        assertThat(doors()).hasSizeGreaterThan(15).contains("review/case/P-1018", "find", "ledger");
        for (String door : doors()) {
            tellsNothing(door);
        }
        pages.on(
                "review/case/P-1018",
                "ada",
                () -> assertThat(said()).as("Ada knows it").contains("found the signature different"));
        PagesOffice.done(
                "ada", () -> PagesOffice.the(CaseAssignmentService.class).giveBack(key, PagesOffice.version(key)));
        PagesOffice.done(
                "ben", () -> PagesOffice.the(CaseAssignmentService.class).take(key, PagesOffice.version(key)));
        for (String door : List.of("review", "review/case/P-1018", "review/signature/P-1018")) {
            tellsNothing(door);
        }
        pages.on("review/signature/P-1018", "ben", () -> {
            fill("What differs", Set.of("slant"));
            pressOnCase("Signature differs");
        });
        pages.on(
                "review/case/P-1018",
                "ben",
                () -> assertThat(said()).as("now Ben reads what both found").contains("Withdraw comparison"));
        assertThat(PagesOffice.file(key).report().settled().facts().one(Fact.SIGNATURE_COMPARISON))
                .isEqualTo(SignatureComparisonFact.DIFFERS_BY_TWO);
    }
}
