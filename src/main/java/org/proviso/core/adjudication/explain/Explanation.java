package org.proviso.core.adjudication.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.matching.Candidate;
import org.proviso.core.rules.ResolvedPack;

/**
 * One page of plain text about a case, in the order a reviewer reads: what the rules say, what the envelope says, what
 * the records say, what the law asks. A protected address is never written out.
 */
public final class Explanation {

    /** A candidate below one in a hundred does not help the reviewer choose. */
    private static final double WORTH_A_LOOK = 0.01;

    private final CaseReport report;
    private final Records records;
    private final ResolvedPack pack;
    private final String asOf;
    private final TextPage page = new TextPage();

    private Explanation(CaseReport report, Records records, ResolvedPack pack, String asOf) {
        this.report = report;
        this.records = records;
        this.pack = pack;
        this.asOf = asOf;
    }

    /** The page; {@code asOf} is the moment of the assessment in words. */
    public static String of(CaseReport report, Records records, ResolvedPack pack, String asOf) {
        return new Explanation(report, records, pack, asOf).write();
    }

    private String write() {
        heading();
        whatTheRulesSay();
        stillToDo();
        asks();
        EnvelopeSection.write(report, page);
        voter();
        RecordsSection.write(report, page);
        LawSection.write(report, page);
        contests();
        page.blank().wrapped("", pack.pack().caution());
        page.line("Assessed as of " + asOf + " under rule pack " + pack.pack().id() + " "
                + pack.hash().substring(0, 12) + ".");
        return page.toString();
    }

    private void heading() {
        Election election = records.election();
        Envelope envelope = report.envelope();
        Envelope.Cast cast = envelope.cast();
        page.edges("ENVELOPE " + envelope.envelopeNo(), election.name() + ", " + DateWords.longDate(election.date()));
        String when = cast.at() == null ? "" : " at " + DateWords.hour(cast.at());
        String why = cast.issueReasons().isEmpty()
                ? ""
                : "; issued because: "
                        + cast.issueReasons().stream().map(DateWords::code).collect(Collectors.joining(", "));
        page.wrapped(
                "",
                cast.votingLocation() + (cast.precinct().isEmpty() ? "" : ", cast in precinct " + cast.precinct())
                        + " with style " + cast.ballotStyle() + when + why + ".");
    }

    private void whatTheRulesSay() {
        page.blank();
        page.labelled("Now", OutcomeSymbol.beside(report.recommendation()));
        Recommendation outlook = report.outlook().outcome().recommendation();
        page.labelled(
                "Outlook",
                outlook == Recommendation.RESEARCH
                        ? "research: the records do not suggest how the open questions will be answered"
                        : OutcomeSymbol.beside(outlook)
                                + ", if the open questions are answered as the records suggest");
        String reasons = report.outlook().outcome().reasons().stream()
                .map(reason -> reason.words())
                .collect(Collectors.joining("; "));
        page.labelled(
                "Reason", reasons.isEmpty() && outlook == Recommendation.COUNT ? "nothing stands in the way" : reasons);
        if (report.presumed().heldApart()) {
            page.labelled("Held apart", "yes: cast during hours extended by a court");
        }
    }

    private void stillToDo() {
        List<String> open = report.stillOpen();
        String label = "Still to do";
        for (String question : open) {
            page.labelled(label, question);
            label = "";
        }
    }

    private void asks() {
        String label = "The voter may";
        for (DueAsk ask : report.asks()) {
            String until = ask.deadline()
                    .map(deadline -> "until " + DateWords.longDate(deadline.day()) + ", "
                            + DateWords.hour(deadline.lastMoment())
                            + (deadline.wasMoved()
                                    ? " (moved from " + DateWords.date(deadline.counted())
                                            + ", when the office is closed)"
                                    : ""))
                    .orElse(
                            ask.untilTheMeeting()
                                    ? "until the board meets, on a date not set yet"
                                    : "until a date that no source gives");
            page.labelled(label, ask.ask().words() + " " + until + "; notify the voter now");
            label = "";
        }
    }

    private void voter() {
        page.title("What the records say");
        Link link = report.link();
        report.voter()
                .ifPresentOrElse(
                        voter -> VoterSection.write(voter, link, page), () -> page.wrapped("  ", nobody(link)));
        for (Candidate candidate : link.candidates()) {
            if (candidate.probability() < WORTH_A_LOOK) {
                continue;
            }
            records.voter(candidate.voterId()).ifPresent(voter -> VoterSection.candidate(voter, candidate, page));
        }
    }

    private static String nobody(Link link) {
        if (link.identity() == VoterIdentityFact.SEVERAL_FIT) {
            String doubt = link.doubt().isEmpty() ? "More than one roll record may be this voter." : link.doubt();
            return doubt + " A reviewer must choose.";
        }
        return link.identity() == VoterIdentityFact.NOT_ON_ROLL
                ? "A reviewer searched and found no record of this voter."
                : "No roll record matches. Search the other records and enter the result.";
    }

    private void contests() {
        BallotContests contests = report.presumed().facts().contests();
        if (contests == null || report.outlook().outcome().recommendation() != Recommendation.COUNT_IN_PART) {
            return;
        }
        page.title("Contests");
        page.labelled("Count", titles(report.outlook().outcome().contests()));
        Set<String> dropped = new LinkedHashSet<>(contests.cast());
        dropped.removeAll(report.outlook().outcome().contests());
        page.labelled("Do not count", titles(dropped));
        page.labelled("Not on ballot", titles(contests.missing()));
    }

    private String titles(Iterable<String> contestIds) {
        List<String> titles = new ArrayList<>();
        contestIds.forEach(id -> titles.add(records.contestTitle(id)));
        return String.join(" \u00B7 ", titles);
    }
}
