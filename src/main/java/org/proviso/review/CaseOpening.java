package org.proviso.review;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.Link;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.RollIndex;
import org.proviso.core.matching.RollIndexBuilder;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.ElectionLoaded;
import org.proviso.files.ElectionFolder;
import org.proviso.files.FolderRecords;
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

    private static final int THREADS = 2;

    private final CaseStore cases;
    private final LinkStore links;
    private final AssessmentStore assessments;
    private final AssessmentService service;
    private final RollService roll;
    private final CaseDesk desk;

    CaseOpening(
            CaseStore cases,
            LinkStore links,
            AssessmentStore assessments,
            AssessmentService service,
            RollService roll,
            CaseDesk desk) {
        this.cases = cases;
        this.links = links;
        this.assessments = assessments;
        this.service = service;
        this.roll = roll;
        this.desk = desk;
    }

    @EventListener
    @Order(ElectionLoaded.REVIEW_TAKES)
    @Transactional(propagation = Propagation.MANDATORY)
    public void openCases(ElectionLoaded loaded) {
        String id = loaded.electionId();
        ElectionFolder folder = loaded.folder();
        Map<String, Link> presumed = presumed(folder);
        open(id, folder.envelopes());
        links.insertPresumed(id, roll.snapshotInUse(id, SnapshotKind.ROLL), presumed);
        DeadlineBook book = desk.book(id);
        LocalDateTime asOf = desk.now(id);
        Adjudicator adjudicator = new Adjudicator(new FolderRecords(folder, presumed), book, asOf);
        Map<CaseKey, CaseReport> reports = new TreeMap<>();
        for (Envelope envelope : folder.envelopes()) {
            reports.put(
                    new CaseKey(id, envelope.envelopeNo()),
                    adjudicator.report(envelope, presumed.get(envelope.envelopeNo())));
        }
        Map<CaseKey, List<KeptAssessment>> kept = new LinkedHashMap<>();
        reports.forEach((key, report) -> kept.put(key, KeptAssessment.of(report, Map.of(), book, asOf)));
        assessments.insertFirst(kept);
        service.announce(new TreeMap<>(reports));
    }

    private void open(String id, List<Envelope> envelopes) {
        List<CaseKey> keyed = new ArrayList<>();
        List<CaseKey> toKey = new ArrayList<>();
        for (Envelope envelope : envelopes) {
            boolean waits = envelope.affirmation().fieldStates().containsValue(Envelope.FieldState.NOT_YET_KEYED);
            (waits ? toKey : keyed).add(new CaseKey(id, envelope.envelopeNo()));
        }
        cases.open(toKey, CaseState.RECEIVED);
        cases.open(keyed, CaseState.OPEN);
    }

    private static Map<String, Link> presumed(ElectionFolder folder) {
        RollIndexBuilder index = RollIndex.builder();
        folder.voters().values().forEach(index::add);
        List<MatchQuery> queries =
                folder.envelopes().stream().map(MatchQuery::of).toList();
        Map<String, Link> links = new LinkedHashMap<>();
        for (Match match : new Matcher(index.build()).matchAll(queries, THREADS)) {
            links.put(match.envelopeNo(), Link.presumed(match));
        }
        return links;
    }
}
