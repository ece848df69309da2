package org.proviso.status.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.proviso.core.ReceiptNumber.Problem;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.files.packs.RulePacks;
import org.proviso.status.VoterCaseState;

/** The words of the voter's page: none is missing, in either language. */
class StatusWordsTest {

    static Properties words(String file) throws IOException {
        Properties words = new Properties();
        try (Reader text =
                new InputStreamReader(StatusWordsTest.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            words.load(text);
        }
        return words;
    }

    @Test
    void both_languages_say_the_same_things() throws IOException {
        Properties english = words("status.properties");
        Properties spanish = words("status_es.properties");
        assertThat(spanish.keySet()).isEqualTo(english.keySet());
        for (String key : english.stringPropertyNames()) {
            assertThat(parts(spanish.getProperty(key))).as(key).isEqualTo(parts(english.getProperty(key)));
        }
    }

    private static String parts(String text) {
        return text.replaceAll("[^{}0-9]|(?<!\\{)\\d(?!\\})", "");
    }

    @Test
    void every_state_ask_and_reason_has_its_words() throws IOException {
        Properties english = words("status.properties");
        for (VoterCaseState state : VoterCaseState.values()) {
            assertThat(english.stringPropertyNames()).contains("title." + state.code());
            if (!state.isOpen()) {
                assertThat(english.stringPropertyNames()).contains("happened." + state.code(), "next." + state.code());
            }
        }
        for (Problem slip : List.of(Problem.CHECK_DIGIT, Problem.NOT_NINE_DIGITS)) {
            assertThat(english.stringPropertyNames())
                    .contains("look-up.slip." + slip.code(), "look-up.slip." + slip.code() + ".newest");
        }
        for (DeciderKind decider : DeciderKind.values()) {
            assertThat(english.stringPropertyNames())
                    .contains("planned.on." + decider.code(), "planned.by." + decider.code());
        }
        for (Ask ask : Ask.values()) {
            assertThat(english.stringPropertyNames())
                    .contains("ask." + ask.code(), "ask." + ask.code() + ".how", "ask." + ask.code() + ".missing");
        }
        for (Reason reason : Reason.values()) {
            assertThat(english.stringPropertyNames()).contains("reason." + reason.code());
        }
    }

    /** Otherwise the translation would be of another sentence. */
    @Test
    void the_reasons_are_those_of_the_federal_floor_word_for_word() throws IOException {
        Properties english = words("status.properties");
        ResolvedPack pack =
                PackResolver.resolve(RulePacks.load("example"), LocalDate.of(2026, 8, 4), RulePacks.rulings(List.of()));
        for (Reason reason : Reason.values()) {
            assertThat(english.getProperty("reason." + reason.code()).replace("''", "'"))
                    .isEqualTo(pack.text(reason).orElseThrow().notice());
        }
    }
}
