package org.proviso.core.adjudication.explain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A page is a hundred characters wide. */
class TextPageTest {

    private static final String FIFTY = "x".repeat(50);

    @Test
    void words_stand_at_the_right_edge_and_never_touch_those_to_the_left() {
        assertThat(new TextPage().edges("  1  Is it?", "yes").toString())
                .isEqualTo("  1  Is it?" + " ".repeat(86) + "yes\n");
        assertThat(new TextPage().edges(FIFTY, FIFTY).toString()).isEqualTo(FIFTY + "  " + FIFTY + "\n");
    }

    @Test
    void a_paragraph_is_wrapped_at_the_width_of_the_page_under_its_first_word() {
        String fits = "y".repeat(45);
        assertThat(new TextPage().wrapped("  - ", FIFTY + " " + fits).toString())
                .isEqualTo("  - " + FIFTY + " " + fits + "\n");
        assertThat(new TextPage().wrapped("  - ", FIFTY + " " + fits + "y end").toString())
                .isEqualTo("  - " + FIFTY + "\n    " + fits + "y end\n");
    }

    @Test
    void a_word_wider_than_the_page_gets_a_line_without_an_empty_one_before_it() {
        String wide = "z".repeat(120);
        assertThat(new TextPage().wrapped("  - ", wide + " end").toString()).isEqualTo("  - " + wide + "\n    end\n");
    }

    @Test
    void a_label_that_says_nothing_is_left_out() {
        assertThat(new TextPage()
                        .labelled("Name", "Kell, Ada")
                        .labelled("Note", " ")
                        .toString())
                .isEqualTo("  Name             Kell, Ada\n");
    }
}
