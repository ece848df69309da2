package org.proviso.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The office's phone number can be called from every page that shows it. */
class OfficePhoneTest {

    private static Election.Office office(String phone) {
        return new Election.Office("Tamarack County Clerk", "1 Courthouse Sq", phone, "", Map.of());
    }

    @Test
    void a_telephone_dials_the_digits() {
        assertThat(office("(555) 010-0142").call()).isEqualTo("tel:5550100142");
        assertThat(office(" +1 555 010 0142").call()).isEqualTo("tel:+15550100142");
    }

    @Test
    void it_is_found_among_words() {
        assertThat(office("555-0100").aroundPhone("Call us before you come: 555-0100."))
                .containsExactly("Call us before you come: ", "555-0100", ".");
        assertThat(office("555-0100").aroundPhone("555-0100")).containsExactly("555-0100");
        assertThat(office("555-0100").aroundPhone("Come in.")).containsExactly("Come in.");
    }

    @Test
    void an_office_without_a_number_has_nothing_to_call() {
        assertThat(office("").aroundPhone("Call us.")).containsExactly("Call us.");
    }
}
