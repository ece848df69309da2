package org.proviso.status;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.proviso.core.ReceiptNumber;

class StatusHashTest {

    private static final LocalDate BORN = LocalDate.of(1984, 3, 12);

    private final StatusHash hash = new StatusHash(new byte[32]);

    @Test
    void a_receipt_is_the_same_in_small_letters_and_without_its_dash() {
        assertThat(hash.line(new ReceiptNumber("ehy7 5bdd"), BORN))
                .hasSize(64)
                .isEqualTo(hash.line(new ReceiptNumber("EHY7-5BDD"), BORN));
        assertThat(hash.receipt(new ReceiptNumber("ehy75bdd")))
                .isEqualTo(hash.receipt(new ReceiptNumber(" EHY7-5BDD ")));
    }

    @Test
    void another_receipt_date_or_secret_is_another_line_and_a_receipt_alone_is_none() {
        String line = hash.line(new ReceiptNumber("EHY7-5BDD"), BORN);
        assertThat(line)
                .isNotEqualTo(hash.line(new ReceiptNumber("EHY7-5BDE"), BORN))
                .isNotEqualTo(hash.line(new ReceiptNumber("EHY7-5BDD"), BORN.plusDays(1)))
                .isNotEqualTo(new StatusHash(new byte[] {1}).line(new ReceiptNumber("EHY7-5BDD"), BORN))
                .isNotEqualTo(hash.receipt(new ReceiptNumber("EHY7-5BDD")));
    }
}
