package org.proviso.review.news;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.ElectionLoaded;
import org.proviso.election.LoadWatch;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.election.FolderRecords;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.assess.AssessmentStore;
import org.proviso.review.facts.LinkStore;
import org.proviso.roll.RollMatches;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Opens a case for every envelope of a folder that was loaded: matched to the roll, the link presumed, and assessed
 * over the files just read, which say the same as the tables.
 */
@Component
class CaseOpening {

    /** So many reports are in memory at once. */
    private static final int TOGETHER = 500;

    private final CaseStore cases;
    private final LinkStore links;
    private final AssessmentStore assessments;
    private final AssessmentService service;
    private final RollService roll;
    private final CaseActSteps desk;
    private final LoadWatch watch;

    CaseOpening(
            CaseStore cases,
            LinkStore links,
            AssessmentStore assessments,
            AssessmentService service,
            RollService roll,
            CaseActSteps desk,
            LoadWatch watch) {
        this.cases = cases;
        this.links = links;
        this.assessments = assessments;
        this.service = service;
        this.roll = roll;
        this.desk = desk;
        this.watch = watch;
    }

    @EventListener
    @Order(ElectionLoaded.REVIEW_TAKES)
    @Transactional(propagation = Propagation.MANDATORY)
    public void openCases(ElectionLoaded loaded) {
        ElectionId id = loaded.electionId();
        ElectionFolder folder = loaded.folder();
        watch.begin("The envelopes are being matched", 0);
        Map<EnvelopeNumber, Link> presumed =
                RollMatches.presumed(folder.voters().values(), folder.envelopes());
        open(id, folder.envelopes());
        links.insertPresumed(id, roll.snapshotInUse(id, SnapshotKind.ROLL), presumed);
        DeadlineBook book = desk.book(id);
        LocalDateTime asOf = desk.now(id);
        Adjudicator adjudicator = new Adjudicator(new FolderRecords(folder, presumed), book, asOf);
        LongConsumer progress = watch.begin(
                "The envelopes are being assessed", folder.envelopes().size());
        List<Envelope> envelopes = folder.envelopes().stream()
                .sorted(Comparator.comparing(Envelope::envelopeNo))
                .toList();
        for (int from = 0; from < envelopes.size(); from += TOGETHER) {
            SortedMap<EnvelopeKey, CaseReport> reports = new TreeMap<>();
            for (Envelope envelope : envelopes.subList(from, Math.min(envelopes.size(), from + TOGETHER))) {
                progress.accept(from + reports.size() + 1L);
                reports.put(
                        new EnvelopeKey(id, envelope.envelopeNo()),
                        adjudicator.report(
                                envelope,
                                Objects.requireNonNull(
                                        presumed.get(envelope.envelopeNo()),
                                        "every envelope has a link, if only to nobody")));
            }
            Map<EnvelopeKey, List<KeptAssessment>> kept = new LinkedHashMap<>();
            reports.forEach((key, report) -> kept.put(key, KeptAssessment.of(report, Map.of(), book, asOf)));
            assessments.insertFirst(kept);
            service.announce(reports);
        }
    }

    /** One that was not keyed yet waits for that. */
    void open(ElectionId id, List<Envelope> envelopes) {
        List<EnvelopeKey> keyed = new ArrayList<>();
        List<EnvelopeKey> toKey = new ArrayList<>();
        for (Envelope envelope : envelopes) {
            boolean waits = envelope.affirmation().fieldStates().containsValue(Envelope.FieldState.NOT_YET_KEYED);
            (waits ? toKey : keyed).add(new EnvelopeKey(id, envelope.envelopeNo()));
        }
        cases.open(toKey, CaseState.RECEIVED);
        cases.open(keyed, CaseState.OPEN);
    }
}
