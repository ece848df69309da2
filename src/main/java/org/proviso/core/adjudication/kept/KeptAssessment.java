package org.proviso.core.adjudication.kept;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;

/**
 * An assessment as it is kept: the four things it was made from (facts, as-of moment local to the county, rules by
 * their hash, version of the engine) and what came out. Made again from these, it is equal to the last letter.
 */
public record KeptAssessment(
        AssessmentKind way,
        String facts,
        LocalDateTime asOf,
        String packHash,
        int engineVersion,
        Recommendation recommendation,
        List<Reason> reasons,
        boolean heldApart,
        String content) {

    /**
     * The three ways of a case, in the order of {@link AssessmentKind}, as the adjudicator reported it with this book at this
     * moment. A moment finer than a microsecond, which no table keeps, is an {@link IllegalArgumentException}.
     */
    public static List<KeptAssessment> of(
            CaseReport report, Map<Ask, LocalDateTime> noticesSent, DeadlineBook book, LocalDateTime asOf) {
        if (!asOf.truncatedTo(ChronoUnit.MICROS).equals(asOf)) {
            throw new IllegalArgumentException("the as-of moment " + asOf + " is finer than a microsecond");
        }
        return Arrays.stream(AssessmentKind.values())
                .map(way -> {
                    Assessment assessment = way.of(report);
                    KeptFacts facts = new KeptFacts(
                            assessment.facts(),
                            noticesSent,
                            book.calendar().daysClosed(),
                            book.acts().get(DeadlineAnchor.BOARD_MEETING));
                    return of(way, assessment, FactsJson.write(facts), book.pack(), asOf);
                })
                .toList();
    }

    private static KeptAssessment of(
            AssessmentKind way, Assessment assessment, String facts, ResolvedPack pack, LocalDateTime asOf) {
        AssessmentOrigins origins = new AssessmentOrigins(way, facts, asOf, pack.hash(), Assessment.ENGINE_VERSION);
        return new KeptAssessment(
                way,
                facts,
                asOf,
                pack.hash(),
                Assessment.ENGINE_VERSION,
                assessment.outcome().recommendation(),
                assessment.outcome().reasons(),
                assessment.heldApart(),
                AssessmentJson.write(assessment, origins.spelled()));
    }

    /** What it was made from. */
    public AssessmentOrigins origins() {
        return new AssessmentOrigins(way, facts, asOf, packHash, engineVersion);
    }

    /**
     * Makes it again from its facts and its moment under these rules, which are to be those of its hash. Facts that
     * cannot be read are an {@link IllegalArgumentException}.
     */
    public KeptAssessment assessAgain(ResolvedPack pack) {
        KeptFacts read = FactsJson.read(facts);
        QuestionContext setting = read.setting(pack, asOf);
        return of(way, way.assess(read.facts(), setting), FactsJson.write(read), pack, asOf);
    }

    /**
     * In words where it differs from the same made again; empty where it does not. Content that cannot be read is an
     * {@link IllegalArgumentException}.
     */
    public String difference(KeptAssessment again) {
        if (equals(again)) {
            return "";
        }
        if (!origins().areSaidBy(content)) {
            return "its content names facts, rules or a time other than those stored with it";
        }
        if (!content.equals(again.content)) {
            Map<String, Object> before = CanonicalJsonReader.object(content);
            Map<String, Object> now = CanonicalJsonReader.object(again.content);
            Set<String> parts = new TreeSet<>(before.keySet());
            parts.addAll(now.keySet());
            parts.removeIf(part -> Objects.equals(before.get(part), now.get(part)));
            return "recomputed, it differs in: " + String.join(", ", parts).replace('_', ' ');
        }
        return "its recommendation, reasons or held-apart mark differ from its content";
    }
}
