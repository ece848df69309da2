package org.proviso.release.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.mvysny.kaributesting.v10.MockVaadin;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A number that is required before an act. */
class CountFieldTest {

    @BeforeEach
    void aPage() {
        MockVaadin.setup();
    }

    @AfterEach
    void noPage() {
        MockVaadin.tearDown();
    }

    @Test
    void nothing_is_done_without_a_number_and_what_is_wrong_with_it_is_said_at_the_box() {
        CountField empty = new CountField("Empty envelopes");
        List<Integer> done = new ArrayList<>();
        empty.with(done::add);
        assertThat(done).isEmpty();
        assertThat(empty.getErrorMessage()).startsWith("Required.");
        assertThat(empty.isInvalid()).isTrue();
        empty.setValue(0);
        empty.with(done::add);
        assertThat(done).as("zero is a number").containsExactly(0);
        empty.refuse("The batch has 2 envelopes.");
        assertThat(empty.isInvalid()).isTrue();
        assertThat(empty.getErrorMessage()).isEqualTo("The batch has 2 envelopes.");
    }
}
