package org.proviso.review.queue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.core.ElectionId;

/** A filter in the address of its list. */
class QueueFilterTextTest {

    private static final QueueFilter ALL = QueueFilter.all(new ElectionId("e"));

    private static QueueFilter read(String text) {
        return QueueFilterText.read(new ElectionId("e"), text);
    }

    @Test
    void a_filter_is_read_as_it_was_written_whatever_stands_in_it() {
        QueueFilter filter = ALL.with(QueueColumn.LOCATION, "St. Anne's & Son = Hall; \u00F1 100%")
                .with(QueueColumn.OUTLOOK, "count_in_part")
                .with(QueueColumn.AGE, "7")
                .sortedBy(QueueSort.PRECINCT, true);
        assertThat(read(QueueFilterText.write(filter))).isEqualTo(filter);
        assertThat(QueueFilterText.write(ALL)).isEmpty();
        assertThat(read("")).isEqualTo(ALL);
    }

    @Test
    void what_is_no_column_no_code_or_no_number_of_days_is_left_out() {
        assertThat(read("state=asleep&outlook=maybe&age=-1&color=red&sort=size&last=no&precinct="))
                .isEqualTo(ALL);
        assertThat(read("age=9999999999&location=%ZZ&&=&reason").wanted()).isEqualTo(Map.of());
    }
}
