package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Paragraph;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;

/** An end without a decision on the vote: sent on to the home county, or nothing to decide. */
final class AdministrativeEndSheet extends CaseSheet {

    AdministrativeEndSheet(CasePageContext desk, Recommendation end) {
        super(
                end == Recommendation.SENT_ON
                        ? "Send envelope " + desk.number() + " on to home county"
                        : "End envelope " + desk.number() + " without a decision",
                end == Recommendation.SENT_ON ? "Send envelope on" : "End case",
                refusing -> desk.lastFromSheet(refusing, done(desk, end), seen -> act(desk, seen, end)));
        with(
                end == Recommendation.SENT_ON
                        ? "The sealed envelope goes to the voter's home county. It is neither counted nor rejected here."
                        : "There is no vote to decide: the envelope was withdrawn or spoiled, or holds a regular ballot.");
        with(new Paragraph("Reason: "
                + RecommendedProposal.words(
                        desk.file().report().settled().outcome().reasons()) + "."));
    }

    private static ActResult<EnvelopeCase> act(CasePageContext desk, CaseVersion seen, Recommendation end) {
        return end == Recommendation.SENT_ON
                ? desk.acts().endings().sendOn(seen.key(), seen.version())
                : desk.acts().endings().end(seen.key(), seen.version());
    }

    private static String done(CasePageContext desk, Recommendation end) {
        return "Envelope " + desk.number()
                + (end == Recommendation.SENT_ON ? " sent on." : " ended without a decision.");
    }
}
