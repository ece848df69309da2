package org.proviso.ledger.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.YesNo;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A record's components go into the columns that the statement names, each as the column holds it. */
class NamedValuesTest {

    private static final String INSERT = """
            insert into ledger (chain, sequence, at, actor, act, subject, payload, previous_hash, hash)
            values ('office', :place, :slip.at, :slip.seen, 'act', :slip.envelopeNo, '', :slip.at, :slip.at)""";

    private record Slip(EnvelopeNumber envelopeNo, YesNo seen, String at) {}

    private record Row(int place, Slip slip) {}

    private record Noted(
            @Nullable Instant at,
            @Nullable EnvelopeNumber envelopeNo,
            @Nullable YesNo seen) {}

    private static Row row(int place) {
        return new Row(place, new Slip(new EnvelopeNumber("P-" + place), YesNo.UNKNOWN, "t" + place));
    }

    private static List<String> written(JdbcClient jdbc) {
        return jdbc.sql("select concat(subject, ' ', at, ' ', actor) from ledger order by sequence")
                .query(String.class)
                .list();
    }

    @OnBothDatabases
    void one_row_is_written_as_its_columns_hold_it(TestOffice office) {
        assertThat(office.jdbc().sql(INSERT).paramSource(row(7)).update()).isOne();
        assertThat(written(office.jdbc())).containsExactly("P-7 t7 unknown");
    }

    @OnBothDatabases
    void every_row_of_more_than_two_batches_is_written_once(TestOffice office) {
        List<Row> rows =
                IntStream.rangeClosed(1, 2_001).mapToObj(NamedValuesTest::row).toList();
        int[] counts = office.the(NamedParameterJdbcOperations.class)
                .batchUpdate(INSERT, SqlParameterSourceUtils.createBatch(rows));
        assertThat(counts).hasSize(2_001);
        assertThat(written(office.jdbc()))
                .isEqualTo(IntStream.rangeClosed(1, 2_001)
                        .mapToObj(place -> "P-" + place + " t" + place + " unknown")
                        .toList());
    }

    @OnBothDatabases
    void no_rows_are_no_statement(TestOffice office) {
        assertThat(office.the(NamedParameterJdbcOperations.class)
                        .batchUpdate(INSERT, SqlParameterSourceUtils.createBatch(List.of())))
                .isEmpty();
    }

    @OnBothDatabases
    void a_moment_is_kept_as_it_is_and_what_is_not_there_is_empty(TestOffice office) {
        Instant moment = Instant.parse("2026-11-05T23:30:00.123456Z");
        String select = """
                select count(*) from (select cast(:at as timestamp with time zone) as at,
                    cast(:envelopeNo as varchar) as envelope_no, cast(:seen as varchar) as seen) as one
                where\s""";
        assertThat(count(
                        office,
                        select + "at = timestamp with time zone '2026-11-05 23:30:00.123456+00' and envelope_no = 'P-1'"
                                + " and seen = 'no'",
                        new Noted(moment, new EnvelopeNumber("P-1"), YesNo.NO)))
                .isOne();
        assertThat(count(
                        office,
                        select + "at is null and envelope_no is null and seen is null",
                        new Noted(null, null, null)))
                .isOne();
    }

    private static int count(TestOffice office, String sql, Noted noted) {
        return office.jdbc().sql(sql).paramSource(noted).query(Integer.class).single();
    }
}
