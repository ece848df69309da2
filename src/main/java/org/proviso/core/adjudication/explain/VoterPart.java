package org.proviso.core.adjudication.explain;

import org.proviso.core.Voter;
import org.proviso.core.adjudication.Link;
import org.proviso.core.adjudication.Words;
import org.proviso.core.matching.Candidate;

/** The record of the roll that is, or is presumed to be, this voter. */
final class VoterPart {

    private VoterPart() {}

    /** One of several who may be the voter; a protected address stays masked. */
    static void candidate(Voter voter, Candidate candidate, Page page) {
        page.edges("  - " + voter.name().listed() + "  " + voter.voterId(), Likeness.words(candidate.probability()));
        String address = voter.confidential()
                ? EnvelopePart.PROTECTED
                : voter.residence().address().oneLine();
        page.wrapped(
                "    ",
                "born " + Words.date(voter.birthDate()) + " \u00B7 " + address + ". "
                        + String.join(" ", candidate.evidence()));
    }

    static void write(Voter voter, Link link, Page page) {
        page.edges(
                "  " + voter.name().listed() + "  " + voter.voterId(),
                link.isSettled() ? "linked by a reviewer" : Likeness.words(link.probability()));
        Voter.Residence home = voter.residence();
        String address =
                voter.confidential() ? EnvelopePart.PROTECTED : home.address().oneLine();
        page.wrapped(
                "  ",
                "born " + Words.date(voter.birthDate()) + " \u00B7 " + address + " \u00B7 precinct " + home.precinct()
                        + (home.split().isEmpty() ? "" : " split " + home.split())
                        + (voter.party().isEmpty() ? "" : " \u00B7 " + voter.party()));
        if (!link.likeness().isEmpty()) {
            page.wrapped("  ", String.join(" ", link.likeness()));
        }
    }
}
