package org.proviso.core.adjudication.explain;

import org.proviso.core.Voter;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;

/** The record of the roll that is, or is presumed to be, this voter. */
final class VoterSection {

    private VoterSection() {}

    /** One of several who may be the voter; a protected address stays masked. */
    static void candidate(Voter voter, Candidate candidate, TextPage page) {
        page.edges("  - " + voter.name().listed() + "  " + voter.voterId(), MatchWords.words(candidate.probability()));
        String address = voter.confidential()
                ? EnvelopeSection.PROTECTED
                : voter.residence().address().oneLine();
        page.wrapped(
                "    ",
                "born " + DateWords.date(voter.birthDate()) + " \u00B7 " + address + ". "
                        + String.join(" ", candidate.evidence()));
    }

    static void write(Voter voter, Link link, TextPage page) {
        page.edges(
                "  " + voter.name().listed() + "  " + voter.voterId(),
                link.isSettled() ? "linked by a reviewer" : MatchWords.words(link.probability()));
        Voter.Residence home = voter.residence();
        String address = voter.confidential()
                ? EnvelopeSection.PROTECTED
                : home.address().oneLine();
        page.wrapped(
                "  ",
                "born " + DateWords.date(voter.birthDate()) + " \u00B7 " + address + " \u00B7 precinct "
                        + home.precinct()
                        + (home.split().isEmpty() ? "" : " split " + home.split())
                        + (voter.party().isEmpty() ? "" : " \u00B7 " + voter.party()));
        if (!link.likeness().isEmpty()) {
            page.wrapped("  ", String.join(" ", link.likeness()));
        }
    }
}
