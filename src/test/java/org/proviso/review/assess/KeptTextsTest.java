package org.proviso.review.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.proviso.SampleCases;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.core.chain.Sha256;

/** The texts of an assessment come back from their bytes, which are far fewer. */
class KeptTextsTest {

    @Test
    void every_assessment_of_the_samples_comes_back_from_a_sixth_of_its_length() {
        for (String sample : SampleCases.NAMES) {
            SampleCases cases = SampleCases.presumed(sample);
            long letters = 0;
            long bytes = 0;
            for (CaseReport report : cases.reports()) {
                for (KeptAssessment kept : KeptAssessment.of(report, Map.of(), cases.book(), cases.asOf())) {
                    KeptTexts texts = new KeptTexts(kept.facts(), kept.content());
                    byte[] small = texts.small();
                    assertThat(KeptTexts.of(small)).isEqualTo(texts);
                    letters += kept.facts().length() + kept.content().length();
                    bytes += small.length;
                }
            }
            assertThat(bytes).as(sample).isLessThan(letters / 6);
        }
    }

    @Test
    void texts_that_are_empty_long_or_of_other_letters_come_back() {
        for (KeptTexts texts : List.of(
                new KeptTexts("", ""),
                new KeptTexts("{}", ""),
                new KeptTexts("\u00f1\u2713", "\u6c34"),
                new KeptTexts("x".repeat(100_000), "y"))) {
            assertThat(KeptTexts.of(texts.small())).isEqualTo(texts);
        }
    }

    @Test
    void bytes_that_were_changed_or_cut_are_no_texts() {
        byte[] small = new KeptTexts("{\"facts\":{}}", "{\"answers\":[]}").small();
        assertThatIllegalArgumentException().isThrownBy(() -> KeptTexts.of(new byte[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> KeptTexts.of(Arrays.copyOf(small, small.length - 1)));
        for (int place = 0; place < small.length; place++) {
            byte[] changed = small.clone();
            changed[place] ^= 1;
            assertThatIllegalArgumentException().as("byte " + place).isThrownBy(() -> KeptTexts.of(changed));
        }
    }

    /** Rows of every office are read with it: a better one is another file with the next number. */
    @Test
    void the_word_list_never_changes() throws IOException {
        try (InputStream list = KeptTexts.class.getResourceAsStream("texts-1.txt")) {
            String words = new String(
                    Objects.requireNonNull(list, "the list is there").readAllBytes(), StandardCharsets.UTF_8);
            assertThat(Sha256.of(words)).isEqualTo("d9d8c2d2a3094d04bc3ae3cf2ce1bde4dfae692aae6e7d7b56a6952b246b8765");
        }
    }
}
