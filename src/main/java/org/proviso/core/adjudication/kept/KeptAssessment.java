package org.proviso.core.adjudication.kept;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.adjudication.Assessment;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.Recommendation;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.chain.Sha256;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;

/**
 * An assessment as it is kept: the four things it was made from (facts, as-of moment local to the county, rules by
 * their hash, version of the engine) and what came out. Made again from these, it is equal to the last letter.
 */
public record KeptAssessment(
        Way way,
        String facts,
        LocalDateTime asOf,
        String packHash,
        int engineVersion,
        Recommendation recommendation,
        List<Reason> reasons,
        boolean heldApart,
        String content) {

    /**
     * The three ways of a case, in the order of {@link Way}, as the adjudicator reported it with this book at this
     * moment. A moment finer than a microsecond, which no table keeps, is an {@link IllegalArgumentException}.
     */
    public static List<KeptAssessment> of(
            CaseReport report, Map<Ask, LocalDateTime> noticesSent, DeadlineBook book, LocalDateTime asOf) {
        if (!asOf.truncatedTo(ChronoUnit.MICROS).equals(asOf)) {
            throw new IllegalArgumentException("the as-of moment " + asOf + " is finer than a microsecond");
        }
        return Arrays.stream(Way.values())
                .map(way -> {
                    Assessment assessment = way.of(report);
                    KeptFacts facts = new KeptFacts(
                            assessment.facts(), noticesSent, book.calendar().daysClosed());
                    return of(way, assessment, FactsText.write(facts), book.pack(), asOf);
                })
                .toList();
    }

    private static KeptAssessment of(
            Way way, Assessment assessment, String facts, ResolvedPack pack, LocalDateTime asOf) {
        Map<String, Object> madeFrom = new HashMap<>();
        madeFrom.put("way", way.code());
        madeFrom.put("facts", Sha256.of(facts));
        madeFrom.put("as_of", asOf.toString());
        madeFrom.put("pack", pack.hash());
        madeFrom.put("engine_version", Assessment.ENGINE_VERSION);
        return new KeptAssessment(
                way,
                facts,
                asOf,
                pack.hash(),
                Assessment.ENGINE_VERSION,
                assessment.outcome().recommendation(),
                assessment.outcome().reasons(),
                assessment.heldApart(),
                AssessmentText.write(assessment, madeFrom));
    }

    /** Whether this version of the engine made it; only then can it be made again. */
    public boolean isOfThisEngine() {
        return engineVersion == Assessment.ENGINE_VERSION;
    }

    /**
     * Makes it again from its facts and its moment under these rules, which are to be those of its hash. Facts that
     * cannot be read are an {@link IllegalArgumentException}.
     */
    public KeptAssessment again(ResolvedPack pack) {
        KeptFacts read = FactsText.read(facts);
        Setting setting = read.setting(pack, asOf);
        return of(way, way.assess(read.facts(), setting), FactsText.write(read), pack, asOf);
    }
}
