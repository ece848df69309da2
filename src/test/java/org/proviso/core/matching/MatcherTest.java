package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.Address;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.spelling.WrittenBirthDate;

class MatcherTest {

    private static final LocalDate BORN = LocalDate.of(1974, 3, 9);

    private final Matcher matcher = new Matcher(SmallRoll.with(
            SmallRoll.entry("V1", "Oyelaran", "Catherine", "Marie", "", BORN, "1204", "4821"),
            SmallRoll.entry("V2", "Thackeray", "Owen", "", "SR", LocalDate.of(1950, 6, 2), "88", "1111"),
            SmallRoll.entry("V3", "Thackeray", "Owen", "", "JR", LocalDate.of(1979, 11, 30), "88", "2222"),
            SmallRoll.entry("V4", "Quintanilla", "Luz", "", "", LocalDate.of(1990, 1, 5), "17", "3333"),
            SmallRoll.entry("V5", "Marchetti", "Dana", "", "", LocalDate.of(1900, 1, 1), "31", "4444")));

    @Test
    void the_same_person_is_sure() {
        assertBest(query("Oyelaran", "Catherine", "", BORN, "1204", "4821"), new VoterId("V1"), MatchVerdict.SURE);
    }

    @Test
    void a_nickname_a_typo_or_an_exchanged_date_is_still_sure_or_likely() {
        assertFound(query("Oyelaran", "Kate", "", BORN, "1204", "4821"), new VoterId("V1"));
        assertFound(query("Oyelran", "Catherine", "", BORN, "5", "4821"), new VoterId("V1"));
        assertFound(query("Oyelaran", "Kathryn", "", LocalDate.of(1974, 9, 3), "1204", "4821"), new VoterId("V1"));
        assertFound(query("Catherine", "Oyelaran", "", BORN, "1204", ""), new VoterId("V1"));
    }

    @Test
    void a_changed_surname_with_the_same_date_and_last_four_is_found() {
        assertFound(query("Brandvold", "Catherine", "", BORN, "5", "4821"), new VoterId("V1"));
    }

    /** The slip changes the sound, the date has another slip, the number and the home are others: only respelling finds her. */
    @Test
    void two_slips_are_found_under_another_spelling_of_the_surname() {
        assertFound(query("Quintarilla", "Luz", "", LocalDate.of(1990, 1, 6), "5", ""), new VoterId("V4"));
    }

    @Test
    void exchanged_names_are_found_where_the_given_name_is_a_nickname() {
        assertFound(query("Kate", "Oyelaran", "", BORN, "1204", ""), new VoterId("V1"));
    }

    @Test
    void a_twin_is_never_sure() {
        assertNotSure(query("Oyelaran", "Cornelia", "", BORN, "1204", ""));
        assertNotSure(query("Oyelaran", "Cornelia", "", BORN, "1204", "9105"));
        assertNotSure(query("Oyelaran", "Catalina", "", BORN, "1204", "9105"));
    }

    /** No twin has the last four too; away from home nobody vouches for that. */
    @Test
    void who_goes_by_another_name_is_sure_with_surname_date_last_four_and_home() {
        assertBest(query("Oyelaran", "Bunny", "", BORN, "1204", "4821"), new VoterId("V1"), MatchVerdict.SURE);
        assertNotSure(query("Oyelaran", "Bunny", "", BORN, "5", "4821"));
        assertNotSure(query("Oyelaran", "Bunny", "", LocalDate.of(1974, 3, 8), "1204", "4821"));
    }

    @Test
    void a_child_with_a_parents_name_is_never_sure() {
        assertNotSure(query("Quintanilla", "Luz", "", LocalDate.of(2006, 8, 21), "17", ""));
        assertNotSure(query("Quintanilla", "Luz", "", LocalDate.of(2006, 8, 21), "17", "9999"));
        assertNotSure(query("Quintanilla", "Luz", "", null, "17", ""));
    }

    @Test
    void junior_and_senior_are_told_apart_by_the_date_and_left_open_without_it() {
        assertBest(query("Thackeray", "Owen", "", LocalDate.of(1979, 11, 30), "88", ""), new VoterId("V3"), null);
        assertThat(SmallRoll.match(matcher, query("Thackeray", "Owen", "", null, "88", ""))
                        .verdict())
                .isEqualTo(MatchVerdict.AMBIGUOUS);
    }

    @Test
    void a_namesake_with_another_birth_date_is_nobody() {
        Match match =
                SmallRoll.match(matcher, query("Quintanilla", "Luz", "", LocalDate.of(1961, 12, 24), "402", "7070"));
        assertThat(match.verdict()).isEqualTo(MatchVerdict.NONE);
    }

    @Test
    void a_placeholder_birth_date_is_unknown_and_no_difference() {
        MatchQuery query = query("Marchetti", "Dana", "", LocalDate.of(1966, 4, 4), "31", "4444");
        assertBest(query, new VoterId("V5"), MatchVerdict.SURE);
        assertThat(SmallRoll.match(matcher, query).best().orElseThrow().evidence())
                .doesNotContain("Different date of birth.");
    }

    @Test
    void the_year_that_can_be_read_tells_a_father_from_a_son() {
        assertBest(written("1979", "Thackeray", "Owen", "88", ""), new VoterId("V3"), null);
        assertBest(written("13/40/1950", "Thackeray", "Owen", "88", ""), new VoterId("V2"), null);
        assertThat(SmallRoll.match(matcher, written("13/40/1950", "Thackeray", "Owen", "88", ""))
                        .best()
                        .orElseThrow()
                        .evidence())
                .contains("What can be read of the date of birth, the year, is the same.");
    }

    /** A child may have written the parent's number; a part of a date rules nobody out, and another year speaks against. */
    @Test
    void a_part_of_a_date_is_sure_only_with_a_number_and_never_where_it_differs() {
        assertBest(written("02/29/1974", "Oyelaran", "Catherine", "1204", ""), new VoterId("V1"), MatchVerdict.LIKELY);
        assertBest(written("1974", "Oyelaran", "Catherine", "1204", "4821"), new VoterId("V1"), MatchVerdict.SURE);
        assertNotSure(written("1999", "Oyelaran", "Catherine", "1204", "4821"));
        assertThat(SmallRoll.match(matcher, written("1999", "Oyelaran", "Catherine", "1204", "4821"))
                        .reason())
                .contains("the dates of birth differ");
        assertThat(SmallRoll.match(matcher, written("3/1974", "Oyelaran", "Catherine", "1204", ""))
                        .reason())
                .contains("without a whole date of birth");
    }

    private static MatchQuery written(String birth, String last, String first, String house, String last4) {
        MatchQuery undated = query(last, first, "", null, house, last4);
        return new MatchQuery(
                undated.envelopeNo(),
                undated.name(),
                undated.formerName(),
                null,
                WrittenBirthDate.read(birth),
                undated.residence(),
                undated.former(),
                undated.idLast4(),
                undated.driversLicense());
    }

    @Test
    void a_stranger_is_nobody() {
        assertThat(SmallRoll.match(matcher, query("Zabriskie", "Tor", "", LocalDate.of(1988, 8, 8), "9", "8080"))
                        .verdict())
                .isEqualTo(MatchVerdict.NONE);
    }

    @Test
    void the_answer_is_the_same_for_any_number_of_threads() {
        List<MatchQuery> queries = List.of(
                query("Oyelaran", "Kate", "", BORN, "1204", "4821"), query("Thackeray", "Owen", "", null, "88", ""));
        assertThat(matcher.matchAll(queries, 4)).isEqualTo(matcher.matchAll(queries, 1));
    }

    @Test
    void the_evidence_names_each_field_in_words() {
        assertThat(SmallRoll.match(matcher, query("Oyelaran", "Kate", "", BORN, "1204", "4821"))
                        .best()
                        .orElseThrow()
                        .evidence())
                .contains(
                        "Same date of birth and last 4 of SSN.",
                        "First name is a known short form of the other: KATE / CATHERINE.",
                        "No other voter on the roll has this last name.");
    }

    private void assertBest(MatchQuery query, VoterId voterId, MatchVerdict verdict) {
        Match match = SmallRoll.match(matcher, query);
        assertThat(match.best().orElseThrow().voterId().value()).isEqualTo(voterId.value());
        assertThat(match.verdict())
                .as(match.toString())
                .isIn(verdict == null ? MatchVerdict.values() : new MatchVerdict[] {verdict});
        assertThat(match.verdict()).isIn(MatchVerdict.SURE, MatchVerdict.LIKELY);
    }

    private void assertFound(MatchQuery query, VoterId voterId) {
        Match match = SmallRoll.match(matcher, query);
        assertThat(match.verdict()).as(match.toString()).isIn(MatchVerdict.SURE, MatchVerdict.LIKELY);
        assertThat(match.best().orElseThrow().voterId().value()).isEqualTo(voterId.value());
    }

    private void assertNotSure(MatchQuery query) {
        Match match = SmallRoll.match(matcher, query);
        assertThat(match.verdict()).as(match.toString()).isNotEqualTo(MatchVerdict.SURE);
    }

    private static MatchQuery query(
            String last, String first, String suffix, LocalDate born, String house, String last4) {
        return new MatchQuery(
                new EnvelopeNumber("E1"),
                new PersonName(last, first, "", suffix),
                "",
                born,
                new Address(house + " North Quarry Street", "", "Millbrook", "49871"),
                Address.NONE,
                last4,
                "");
    }
}
