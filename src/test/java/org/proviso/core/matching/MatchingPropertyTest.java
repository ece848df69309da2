package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotEmpty;
import org.proviso.core.Address;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.grades.AddressGrade;
import org.proviso.core.matching.grades.BirthPartGrade;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.LicenseGrade;
import org.proviso.core.matching.grades.MiddleGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.grades.SuffixGrade;
import org.proviso.core.matching.grades.SurnameGrade;
import org.proviso.core.matching.index.RollFrequencies;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.Digits;
import org.proviso.core.matching.spelling.EditDistance;
import org.proviso.core.matching.spelling.JaroWinkler;
import org.proviso.core.matching.spelling.NameFingerprint;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.Nicknames;
import org.proviso.core.matching.spelling.PackedDate;
import org.proviso.core.matching.spelling.Soundex;
import org.proviso.core.matching.spelling.SpellingDifference;
import org.proviso.core.matching.spelling.StreetAddress;
import org.proviso.core.matching.spelling.StreetName;

/** What must hold of matching for any names, dates and numbers. */
class MatchingPropertyTest {

    private static final LocalDate BORN = LocalDate.of(1974, 3, 9);
    private static final RollIndex INDEX = SmallRoll.with(
            SmallRoll.entry("V1", "Oyelaran", "Catherine", "Marie", "", BORN, "1204", "4821"),
            SmallRoll.entry("V2", "Oyelaran", "Conrad", "", "", BORN, "1204", "4812"),
            SmallRoll.entry("V3", "Thackeray", "Owen", "", "SR", LocalDate.of(1950, 6, 2), "88", ""));
    private static final Matcher MATCHER = new Matcher(INDEX);

    @Property(tries = 2_000)
    void names_compare_alike_both_ways(@ForAll("names") String a, @ForAll("names") String b, @ForAll boolean common) {
        assertThat(JaroWinkler.similarity(a, b)).isEqualTo(JaroWinkler.similarity(b, a));
        assertThat(EditDistance.optimalStringAlignment(a, b)).isEqualTo(EditDistance.optimalStringAlignment(b, a));
        assertThat(SpellingDifference.of(a, b)).isEqualTo(SpellingDifference.of(b, a));
        assertThat(SurnameGrade.of(a, b, common)).isEqualTo(SurnameGrade.of(b, a, common));
        assertThat(GivenGrade.of(a, b, common)).isEqualTo(GivenGrade.of(b, a, common));
        assertThat(MiddleGrade.of(a, b)).isEqualTo(MiddleGrade.of(b, a));
        assertThat(Nicknames.kin(a, b)).isEqualTo(Nicknames.kin(b, a));
    }

    @Property(tries = 2_000)
    void dates_and_numbers_compare_alike_both_ways(
            @ForAll("dates") LocalDate a,
            @ForAll("dates") LocalDate b,
            @ForAll @IntRange(max = 9_999) int x,
            @ForAll @IntRange(max = 9_999) int y) {
        int date = PackedDate.of(a);
        int other = PackedDate.of(b);
        assertThat(DateGrade.of(date, other)).isEqualTo(DateGrade.of(other, date));
        assertThat(NumberGrade.of(Digits.spread(x), Digits.spread(y)))
                .isEqualTo(NumberGrade.of(Digits.spread(y), Digits.spread(x)));
    }

    @Property(tries = 500)
    void addresses_compare_alike_both_ways(@ForAll("lines") String a, @ForAll("lines") String b) {
        StreetAddress address = AddressNormalizer.parse(a, "");
        StreetAddress other = AddressNormalizer.parse(b, "");
        UnaryOperator<String> bodies = street -> StreetName.of(street).body();
        assertThat(AddressGrade.of(address, 49871, other, 49872, bodies))
                .isEqualTo(AddressGrade.of(other, 49872, address, 49871, bodies));
    }

    /** The quick look that spares a comparison of spellings never spares one that would have found something. */
    @Property(tries = 2_000)
    void what_is_told_apart_by_its_letters_is_no_spelling_of_one_name(
            @ForAll("names") String a, @ForAll("names") String b) {
        boolean far = NameFingerprint.isFar(NameFingerprint.of(a), NameFingerprint.of(b));
        if (far) {
            assertThat(SpellingDifference.of(a, b)).isEqualTo(SpellingDifference.OTHER);
        }
    }

    @Property(tries = 1_000)
    void a_name_normalized_twice_is_the_name_normalized_once(@ForAll String text) {
        String folded = NameText.fold(text);
        assertThat(NameText.fold(folded)).isEqualTo(folded);
        String surname = NameText.surname(text);
        assertThat(NameText.surname(surname)).isEqualTo(surname);
    }

    @Property(tries = 500)
    void probabilities_are_shares_of_one_whole(@ForAll("queries") MatchQuery query) {
        double sum = 0;
        double before = 1;
        for (Candidate candidate : SmallRoll.match(MATCHER, query).candidates()) {
            assertThat(candidate.probability()).isBetween(0.0, before);
            before = candidate.probability();
            sum += candidate.probability();
        }
        assertThat(sum).isLessThanOrEqualTo(1.000001);
    }

    @Property(tries = 300)
    void evidence_that_agrees_never_lowers_the_probability(@ForAll("queries") MatchQuery query) {
        for (String voter : List.of("V1", "V2")) {
            String last4 = voter.equals("V1") ? "4821" : "4812";
            double without = probability(voter, with(query, query.birthDate(), ""));
            assertThat(probability(voter, with(query, query.birthDate(), last4)))
                    .isGreaterThanOrEqualTo(without);
        }
    }

    /** The score itself, before other voters are weighed against it. */
    @Property(tries = 500)
    void a_field_that_agrees_weighs_more_than_one_that_is_not_known(@ForAll("grades") VoterComparison pair) {
        MatchScorer scorer = new MatchScorer(INDEX, new RollFrequencies(INDEX), Weights.REASONED);
        EnvelopePerson claim = EnvelopePerson.of(query("Oyelaran", "Catherine", BORN, "1204 N Quarry St", "4821"));
        double unknown = scorer.score(claim, pair).ownBits();
        assertThat(scorer.score(claim, agreeing(pair, DateGrade.SAME, pair.last4(), pair.address()))
                        .ownBits())
                .isGreaterThanOrEqualTo(unknown);
        assertThat(scorer.score(claim, agreeing(pair, pair.date(), NumberGrade.SAME, pair.address()))
                        .ownBits())
                .isGreaterThanOrEqualTo(unknown);
        assertThat(scorer.score(claim, agreeing(pair, pair.date(), pair.last4(), AddressGrade.SAME))
                        .ownBits())
                .isGreaterThanOrEqualTo(unknown);
    }

    private static VoterComparison agreeing(
            VoterComparison pair, DateGrade date, NumberGrade last4, AddressGrade address) {
        return new VoterComparison(
                pair.voter(),
                pair.surname(),
                pair.given(),
                pair.middle(),
                pair.suffix(),
                date,
                BirthPartGrade.UNKNOWN,
                last4,
                pair.license(),
                address,
                false);
    }

    private static double probability(String voter, MatchQuery query) {
        return SmallRoll.match(MATCHER, query).candidates().stream()
                .filter(candidate -> candidate.voterId().equals(new VoterId(voter)))
                .mapToDouble(Candidate::probability)
                .findFirst()
                .orElse(0);
    }

    private static MatchQuery with(MatchQuery query, LocalDate born, String last4) {
        return query(
                query.name().last(),
                query.name().first(),
                born,
                query.residence().line(),
                last4);
    }

    private static MatchQuery query(String last, String first, LocalDate born, String line, String last4) {
        PersonName name = new PersonName(last, first, "", "");
        return new MatchQuery(
                new EnvelopeNumber("E1"), name, "", born, new Address(line, "", "", ""), Address.NONE, last4, "");
    }

    @Provide
    Arbitrary<VoterComparison> grades() {
        return Combinators.combine(
                        Arbitraries.of(SurnameGrade.class),
                        Arbitraries.of(GivenGrade.class),
                        Arbitraries.of(MiddleGrade.class))
                .as((surname, given, middle) -> new VoterComparison(
                        INDEX.size() - 3,
                        surname,
                        given,
                        middle,
                        SuffixGrade.NEITHER,
                        DateGrade.UNKNOWN,
                        BirthPartGrade.UNKNOWN,
                        NumberGrade.UNKNOWN,
                        LicenseGrade.UNKNOWN,
                        AddressGrade.UNKNOWN,
                        false));
    }

    @Provide
    Arbitrary<String> names() {
        Arbitrary<String> known = Arbitraries.of(
                "CATHERINE",
                "KATHRYN",
                "KATE",
                "KATIE",
                "SMITH",
                "SMYTHE",
                "SMITH JONES",
                "JONES",
                "DELACRUZ",
                "LI",
                "A",
                "JON",
                "JOHN",
                "JOAN",
                "MARY",
                "MARYANN",
                "UWE",
                "UWEQ");
        return Arbitraries.oneOf(
                known,
                Arbitraries.strings().withCharRange('A', 'F').ofMinLength(1).ofMaxLength(9));
    }

    @Provide
    Arbitrary<LocalDate> dates() {
        return Arbitraries.oneOf(
                Arbitraries.longs().between(0, 40_000).map(LocalDate.of(1898, 1, 1)::plusDays),
                Arbitraries.of(BORN, BORN.plusYears(1), LocalDate.of(1974, 9, 3), LocalDate.of(1947, 3, 9)));
    }

    @Provide
    Arbitrary<String> lines() {
        return Arbitraries.of(
                "1204 N Quarry St",
                "1204 Quarry St Apt 3",
                "1240 N Quarry St",
                "1204 Sorrel Ave",
                "Quarry St",
                "",
                "17",
                "1204 N Quarry St Apt 4",
                "1204 N Qarry Street");
    }

    @Provide
    Arbitrary<MatchQuery> queries() {
        return Combinators.combine(
                        Arbitraries.of("Oyelaran", "Oyelran", "Thackeray", "Okafor", ""),
                        Arbitraries.of("Catherine", "Kate", "Conrad", "C", "Owen", ""),
                        dates().injectNull(0.3),
                        lines(),
                        Arbitraries.of("", "4821", "4812", "9999"))
                .as(MatchingPropertyTest::query);
    }

    /** The number of a sound: letters that code alike are one as first letters too, vowels are 7, H, W and Y are 8. */
    @Property(tries = 1000)
    void a_sound_has_the_number_of_its_code(@ForAll @CharRange(from = 'A', to = 'Z') @NotEmpty String name) {
        String code = SoundexCode.of(name);
        assertThat(Soundex.number(name)).isEqualTo(SoundexCode.number(code));
        assertThat(Soundex.number("")).isZero();
    }
}
