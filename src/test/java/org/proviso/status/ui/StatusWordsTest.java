package org.proviso.status.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.proviso.core.CheckedReceipt.Problem;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
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
        assertThat(spanish.stringPropertyNames().stream().filter(key -> !key.startsWith("reason.")))
                .containsExactlyInAnyOrderElementsOf(english.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertThat(parts(spanish.getProperty(key))).as(key).isEqualTo(parts(english.getProperty(key)));
        }
    }

    private static String parts(String text) {
        return text.replaceAll("[^{}0-9]|(?<!\\{)\\d(?!\\})", "");
    }

    @Test
    void every_state_and_ask_has_its_words() throws IOException {
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
    }

    /** What a pack may say of cures is in words, in both languages. */
    @Test
    void every_way_paper_and_declaration_of_the_rules_has_its_words() throws IOException {
        for (String file : List.of("status.properties", "status_es.properties")) {
            assertThat(words(file).stringPropertyNames())
                    .containsAll(named("way.", Rule.cureWays(Ask.IDENTIFICATION)))
                    .containsAll(named("papers.accepts.", InformationRules.ID_ACCEPTS))
                    .containsAll(named("papers.declared.", InformationRules.ID_DECLARATIONS));
        }
    }

    private static List<String> named(String start, Rule rule) {
        return rule.words().stream().map(word -> start + word).toList();
    }

    /** English is the rule pack's own sentence, so that it stands in one place; only the translation stands here. */
    @Test
    void every_reason_has_its_sentence_in_the_federal_floor_and_a_translation() throws IOException {
        Properties spanish = words("status_es.properties");
        RulePack floor = RulePacks.load("us");
        for (Reason reason : Reason.values()) {
            assertThat(floor.reasons().get(reason).notice()).as(reason.code()).endsWith(".");
            assertThat(spanish.getProperty("reason." + reason.code(), ""))
                    .as(reason.code())
                    .endsWith(".");
        }
        assertThat(words("status.properties").stringPropertyNames()).noneMatch(key -> key.startsWith("reason."));
    }
}
