package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What other rules would change in the sample's general election. */
class WhatIfCommandTest {

    private static final String GENERAL = "sample-cases/tamarack-general";

    @Test
    void names_the_envelopes_that_come_out_otherwise_from_what_to_what_and_why() {
        Shell run = Shell.run("what-if", GENERAL, "--set", "identification.required_of=nobody");

        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .containsPattern("\\d+ of 240 envelopes come out differently")
                .contains("outlook wait for the voter -> count")
                .contains("Was identification shown? \"Defect: the voter showed no identification\"")
                .contains("under identification.required_of (supposed value).")
                .contains("Check with counsel");
    }

    @Test
    void changes_nothing_under_the_same_rules_and_much_under_the_floor_alone() {
        assertThat(Shell.run("what-if", GENERAL, "--pack", "example").out())
                .contains("0 of 240 envelopes come out differently.");
        assertThat(Shell.run("what-if", GENERAL, "--pack", "us").out()).contains("-> research");
    }

    @Test
    void refuses_what_is_no_rule_and_wants_something_to_suppose() {
        assertThat(Shell.run("what-if", GENERAL, "--set", "a.b=c").err()).contains("is not a known rule");
        assertThat(Shell.run("what-if", GENERAL).err()).contains("name another --pack, or a value with --set");
    }
}
