package org.proviso.core.adjudication;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.FactFinder;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;

/** Assesses envelopes of one election under one rule pack at one moment (local to the county). Thread-safe. */
public final class Adjudicator {

    private final Records records;
    private final DeadlineBook book;
    private final LocalDateTime asOf;
    private final FactFinder finder;

    public Adjudicator(Records records, DeadlineBook book, LocalDateTime asOf) {
        this.records = records;
        this.book = book;
        this.asOf = asOf;
        this.finder = new FactFinder(records, book);
    }

    /** The case of an envelope with its link. */
    public CaseReport report(Envelope envelope, Link link) {
        QuestionContext setting = setting(records.noticesSent(envelope.envelopeNo()));
        CaseFacts presumed = finder.presumed(envelope, link);
        Assessment overPresumed = Assessment.assess(presumed, setting);
        Optional<Voter> voter = Optional.ofNullable(link.voterId()).flatMap(records::voter);
        return new CaseReport(
                envelope,
                link,
                voter,
                Assessment.assess(finder.settled(envelope, link, presumed), setting),
                overPresumed,
                overPresumed.outlook(setting));
    }

    private QuestionContext setting(Map<Ask, LocalDateTime> noticesSent) {
        return new QuestionContext(book.pack(), new ElectionClocks(book, asOf, noticesSent));
    }
}
