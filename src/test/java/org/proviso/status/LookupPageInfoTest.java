package org.proviso.status;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.core.CheckedReceipt.Problem;
import org.proviso.core.Election;
import org.proviso.core.ReceiptNumber;

class LookupPageInfoTest {

    private static LookupPageInfo office(boolean checkDigit) {
        return new LookupPageInfo(
                new Election.Office("Small County", "1 Court Sq", "555-0100", "", Map.of()),
                "General",
                checkDigit,
                false);
    }

    @Test
    void a_slip_follows_from_the_number_where_receipts_have_a_check_digit() {
        assertThat(office(true).slip(new ReceiptNumber("1111-2222-3"))).contains(Problem.CHECK_DIGIT);
        assertThat(office(true).slip(new ReceiptNumber("1111"))).contains(Problem.NOT_NINE_DIGITS);
        assertThat(office(true).slip(new ReceiptNumber("1111-2222-2"))).isEmpty();
        assertThat(office(false).slip(new ReceiptNumber("1111-2222-3"))).isEmpty();
    }

    @Test
    void a_number_with_letters_may_be_of_an_earlier_election_and_has_none() {
        assertThat(office(true).slip(new ReceiptNumber("869H-Q7MF"))).isEmpty();
    }
}
