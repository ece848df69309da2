package org.proviso.ledger.statement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope.Condition;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.YesNo;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.springframework.dao.DataRetrievalFailureException;

/** A record is made of a row by the names of its components, each as its column holds it. */
class ReadRecordsTest {

    private record Numbers(
            int few,
            long many,
            double share,
            boolean said,
            @Nullable Integer missing) {}

    private record Times(
            LocalDate onDay,
            LocalDateTime atHome,
            Instant moment,
            @Nullable Instant missing) {}

    private record Codes(
            YesNo answer, Condition state, @Nullable Condition missing) {}

    private record Lists(List<Reason> reasons, Set<String> words, List<Reason> none) {}

    private record Slip(EnvelopeKey key, @Nullable UserName takenBy, int version) {}

    private record Several(Slip slip, String note) {}

    private static <T> T read(TestOffice office, Class<T> type, String columns) {
        return office.jdbc().sql("select " + columns).query(type).single();
    }

    @OnBothDatabases
    void numbers_and_what_is_true_come_out_of_their_columns(TestOffice office) {
        assertThat(read(
                        office,
                        Numbers.class,
                        "true as said, 3 as few, cast(4000000000 as bigint) as many, cast(0.25 as double precision) as share,"
                                + " cast(null as integer) as missing"))
                .isEqualTo(new Numbers(3, 4_000_000_000L, 0.25, true, null));
    }

    @OnBothDatabases
    void a_count_is_read_as_a_number(TestOffice office) {
        assertThat(read(
                        office,
                        Numbers.class,
                        "count(*) as few, count(*) as many, 1 as share, count(*) > 0 as said, count(*) as missing"))
                .isEqualTo(new Numbers(1, 1, 1, true, 1));
    }

    @OnBothDatabases
    void days_and_times_come_out_as_they_were_noted_and_moments_in_utc(TestOffice office) {
        assertThat(read(office, Times.class, """
                        date '2026-11-05' as on_day, timestamp '2026-11-05 17:30:00' as at_home,
                        timestamp with time zone '2026-11-05 17:30:00.123456-07' as moment,
                        cast(null as timestamp with time zone) as missing"""))
                .isEqualTo(new Times(
                        LocalDate.of(2026, 11, 5),
                        LocalDateTime.of(2026, 11, 5, 17, 30),
                        Instant.parse("2026-11-06T00:30:00.123456Z"),
                        null));
    }

    @OnBothDatabases
    void a_code_is_found_by_its_spelling(TestOffice office) {
        assertThat(read(
                        office,
                        Codes.class,
                        "'unknown' as answer, 'feels_empty' as state, cast(null as varchar) as missing"))
                .isEqualTo(new Codes(YesNo.UNKNOWN, Condition.FEELS_EMPTY, null));
    }

    @OnBothDatabases
    void words_between_semicolons_are_a_list_in_their_order(TestOffice office) {
        List<Reason> reasons = List.of(Reason.values()[2], Reason.values()[0]);
        Lists lists = read(
                office,
                Lists.class,
                "'" + reasons.get(0).code() + ";" + reasons.get(1).code()
                        + "' as reasons, 'b;a;b' as words, '' as none");
        assertThat(lists).isEqualTo(new Lists(reasons, Set.of("a", "b"), List.of()));
        assertThat(lists.words()).containsExactly("b", "a");
        assertThatThrownBy(() -> lists.words().add("c")).isInstanceOf(UnsupportedOperationException.class);
    }

    @OnBothDatabases
    void a_record_in_a_record_comes_out_of_the_same_row(TestOffice office) {
        assertThat(
                        read(
                                office,
                                Several.class,
                                "'tamarack' as election_id, 'P-1' as envelope_no, 'ann' as taken_by, 7 as version, 'n' as note"))
                .isEqualTo(new Several(
                        new Slip(
                                new EnvelopeKey(new ElectionId("tamarack"), new EnvelopeNumber("P-1")),
                                new UserName("ann"),
                                7),
                        "n"));
    }

    @OnBothDatabases
    void a_code_that_there_is_not_is_named_with_its_column(TestOffice office) {
        assertThatThrownBy(() ->
                        read(office, Codes.class, "'yes' as answer, 'lost' as state, cast(null as varchar) as missing"))
                .isInstanceOf(DataRetrievalFailureException.class)
                .hasMessageContaining("column state")
                .hasMessageContaining("Condition")
                .hasMessageContaining("lost");
    }

    @OnBothDatabases
    void an_empty_column_is_no_number(TestOffice office) {
        assertThatThrownBy(() -> read(
                        office,
                        Slip.class,
                        "'t' as election_id, 'P-1' as envelope_no, cast(null as varchar) as taken_by,"
                                + " cast(null as integer) as version"))
                .isInstanceOf(DataRetrievalFailureException.class)
                .hasMessage("The column version is empty.");
    }
}
