package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.proviso.SampleCases;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.IdentificationFact;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Finding;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;

/** Facts of any kind are kept whole: what differs in them differs in their text, and they are assessed the same again. */
class KeptFactsPropertyTest {

    private static final CaseReport ANY =
            SampleCases.presumed("tamarack-primary").reports().get(0);
    private static final LocalDate ELECTION_DAY = ChangedPack.ELECTION_DAY;

    /** Identification may be brought until three open days after the notice, so that notices and closed days matter. */
    private static final ResolvedPack PACK = ChangedPack.of("example")
            .with(
                    Rule.cure(Ask.IDENTIFICATION),
                    new RuleValue.Dated(new DeadlineRule(
                            DeadlineAnchor.NOTICE_SENT,
                            new DeadlineOffset.BusinessDays(3),
                            TimeOfDay.CLOSE_OF_BUSINESS,
                            ClosedDayRule.NEXT_OPEN_DAY)),
                    Basis.READ)
            .resolved();

    /** The same pack, read back from how it is kept. */
    private static final ResolvedPack READ_BACK = PackJson.read(PackJson.write(PACK));

    @Property(tries = 500)
    void facts_come_back_equal_and_with_the_same_text(@ForAll("facts") KeptFacts facts) {
        String text = FactsJson.write(facts);
        assertThat(FactsJson.read(text)).isEqualTo(facts);
        assertThat(FactsJson.write(FactsJson.read(text))).isEqualTo(text);
    }

    @Property(tries = 500)
    void facts_that_differ_in_one_finding_have_another_text(
            @ForAll("facts") KeptFacts facts, @ForAll("fact") Fact<?> fact, @ForAll("finding") Finding unknown) {
        Map<Fact<?>, Finding> changed = new LinkedHashMap<>(facts.facts().findings());
        changed.put(fact, unknown);
        KeptFacts other = new KeptFacts(
                new CaseFacts(changed, facts.facts().contests()), facts.noticesSent(), facts.daysClosed());
        assertThat(FactsJson.write(other).equals(FactsJson.write(facts))).isEqualTo(other.equals(facts));
    }

    @Property(tries = 500)
    void any_facts_are_assessed_to_the_same_content_again(
            @ForAll("facts") KeptFacts facts, @ForAll AssessmentKind way) {
        LocalDateTime asOf = ELECTION_DAY.plusDays(9).atTime(12, 0);
        KeptAssessment kept = kept(facts, way, asOf);
        assertThat(kept.assessAgain(READ_BACK)).isEqualTo(kept);
    }

    private static KeptAssessment kept(KeptFacts facts, AssessmentKind way, LocalDateTime asOf) {
        QuestionContext setting = facts.setting(PACK, asOf);
        Assessment assessed = Assessment.assess(facts.facts(), setting);
        CaseReport report = new CaseReport(
                ANY.envelope(),
                ANY.link(),
                Optional.empty(),
                assessed,
                assessed,
                Assessment.outlook(facts.facts(), setting));
        DeadlineBook book = DeadlineBook.of(PACK, facts.daysClosed());
        return KeptAssessment.of(report, facts.noticesSent(), book, asOf).get(way.ordinal());
    }

    @Example
    void a_notice_and_a_closed_day_are_part_of_the_facts() {
        CaseFacts noId = new CaseFacts(Map.of(Fact.IDENTIFICATION, Finding.of(IdentificationFact.MISSING)), null);
        LocalDateTime sent = ELECTION_DAY.plusDays(1).atTime(9, 0);
        LocalDateTime asOf = ELECTION_DAY.plusDays(6).atTime(18, 0);
        KeptFacts told = new KeptFacts(noId, Map.of(Ask.IDENTIFICATION, sent), Set.of());
        KeptFacts closed = new KeptFacts(noId, told.noticesSent(), Set.of(ELECTION_DAY.plusDays(2)));
        String running = kept(closed, AssessmentKind.SETTLED, asOf).content();
        String over = kept(told, AssessmentKind.SETTLED, asOf).content();
        assertThat(running).contains("\"ask_clock\":\"running\"").contains("\"day\":\"2026-11-10\"");
        assertThat(over).contains("\"ask_clock\":\"over\"");
        assertThat(kept(closed, AssessmentKind.SETTLED, asOf).assessAgain(PACK).content())
                .isEqualTo(running);
        assertThat(kept(told, AssessmentKind.SETTLED, asOf).assessAgain(PACK).content())
                .isEqualTo(over);
    }

    @Example
    void a_text_that_is_not_of_facts_is_refused_with_what_is_wrong() {
        String empty = "{\"days_closed\":[],\"facts\":{},\"notices_sent\":{}}";
        assertThat(FactsJson.read(empty).facts().findings()).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FactsJson.read(empty.replace("{},\"n", "{\"mood\":{}},\"n")))
                .withMessageContaining("mood");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FactsJson.read(
                        empty.replace("{},\"n", "{\"ballot\":{\"evidence\":[],\"words\":[\"nice_style\"]}},\"n")))
                .withMessage("\"nice_style\" is not a value of the fact ballot");
        assertThatIllegalArgumentException().isThrownBy(() -> FactsJson.read(empty.replace("[]", "7")));
        assertThatIllegalArgumentException().isThrownBy(() -> FactsJson.read(empty.replace("[]", "[7]")));
    }

    @Provide
    Arbitrary<KeptFacts> facts() {
        Arbitrary<Map<Fact<?>, Finding>> findings =
                Arbitraries.of(Fact.all()).set().flatMap(KeptFactsPropertyTest::findings);
        return Combinators.combine(findings, contests().injectNull(0.3), notices(), closed())
                .as((found, contests, notices, closed) ->
                        new KeptFacts(new CaseFacts(found, contests), notices, closed));
    }

    @Provide
    Arbitrary<Fact<?>> fact() {
        return Arbitraries.of(Fact.all());
    }

    /** A finding that any fact may have: unknown, with or without evidence. */
    @Provide
    Arbitrary<Finding> finding() {
        return evidence().list().ofMaxSize(2).map(list -> new Finding(null, list));
    }

    private static Arbitrary<Map<Fact<?>, Finding>> findings(Set<Fact<?>> facts) {
        return Combinators.combine(
                        facts.stream().map(KeptFactsPropertyTest::findingOf).toList())
                .as(found -> {
                    Map<Fact<?>, Finding> findings = new LinkedHashMap<>();
                    facts.forEach(fact -> findings.put(fact, found.get(findings.size())));
                    return findings;
                });
    }

    private static Arbitrary<Finding> findingOf(Fact<?> fact) {
        List<? extends FactWord> allowed = fact.words();
        Arbitrary<Set<FactWord>> words = Arbitraries.of(allowed)
                .map(word -> (FactWord) word)
                .set()
                .ofMinSize(fact.severalMayHold() ? 0 : 1)
                .ofMaxSize(fact.severalMayHold() ? 3 : 1);
        return Combinators.combine(words.injectNull(0.2), evidence().list().ofMaxSize(2))
                .as(Finding::new);
    }

    private static Arbitrary<Evidence> evidence() {
        return Combinators.combine(
                        Arbitraries.of(EvidenceSource.class),
                        Arbitraries.strings().ofMaxLength(12),
                        moments().injectNull(0.5),
                        moments().injectNull(0.5))
                .as(Evidence::new);
    }

    private static Arbitrary<LocalDateTime> moments() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 30),
                        Arbitraries.integers().between(0, 86_399))
                .as((days, second) -> ELECTION_DAY.plusDays(days).atStartOfDay().plusSeconds(second));
    }

    private static Arbitrary<BallotContests> contests() {
        Arbitrary<Set<String>> ids = Arbitraries.of("PRES", "HOUSE", "SENATE-7", "SCHOOL", "a \"b\"")
                .set()
                .map(LinkedHashSet::new);
        return Combinators.combine(ids, ids, ids).as(BallotContests::new);
    }

    private static Arbitrary<Map<Ask, LocalDateTime>> notices() {
        return Arbitraries.maps(Arbitraries.of(Ask.class), moments()).ofMaxSize(3);
    }

    private static Arbitrary<Set<LocalDate>> closed() {
        return Arbitraries.integers()
                .between(0, 20)
                .map(ELECTION_DAY::plusDays)
                .set()
                .ofMaxSize(2)
                .map(TreeSet::new);
    }
}
