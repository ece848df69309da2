package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.PageDriver.said;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** An address typed wrong or cut off leads to the page that says what is missing, never to "Something went wrong". */
@OnPages
class WrongAddressPageTest {

    private static final String TOO_LONG = "P-" + "1".repeat(60);

    @Autowired
    private ApplicationContext server;

    private void says(String address, String words) {
        PageDriver.withErrorPages(server)
                .on(
                        address,
                        "ada",
                        () -> assertThat(said()).contains("Page not found").contains(words));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "review/case/",
                "review/signature/",
                "review/print/",
                "review/second/",
                "intake/key/",
                "intake/correct/"
            })
    void a_number_that_no_envelope_can_have_is_an_envelope_that_there_is_not(String page) {
        says(page + "P-0", "There is no envelope P-0 in this election.");
        says(page + TOO_LONG, "There is no envelope " + TOO_LONG + " in this election.");
    }

    @Test
    void nor_is_there_a_letter_about_it() {
        says("notices/letter/P-0/1", "There is no such notice.");
        says("notices/letter/" + TOO_LONG + "/1", "There is no envelope " + TOO_LONG);
    }
}
