package org.proviso.journey;

import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.util.List;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.review.CaseState;
import org.proviso.review.DecidedBy;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.ProposalStore;
import org.proviso.review.Settlement;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.DecisionService;

/** Brings a case of the primary all the way: reviewed as the truth file says, read again, and settled as proposed. */
public record Deciding(Primary primary) {

    /** Settled by eve, fay and gil, who record no session. */
    public EnvelopeCase settled(EnvelopeKey key) {
        primary.reviewing(key).work();
        if (primary.now(key).state() == CaseState.PROPOSED) {
            as(
                    "ben",
                    () -> accepted(
                            proposals().secondReview(key, primary.now(key).version(), true, "")));
        }
        ActResult<List<EnvelopeCase>> settled = as(
                "eve",
                () -> primary.office()
                        .services()
                        .inTransaction(() -> decisions().settle(List.of(settlement(key)), by())));
        return settled.ifAccepted()
                .orElseThrow(() -> new AssertionError("not settled: " + settled.refusals()))
                .get(0);
    }

    public EnvelopeCase reopened(EnvelopeKey key) {
        return as(
                "eve",
                () -> accepted(primary.office()
                        .services()
                        .the(DecidedCaseService.class)
                        .reopen(key, primary.now(key).version(), "A paper was found.")));
    }

    private Settlement settlement(EnvelopeKey key) {
        Proposal proposal =
                primary.office().services().the(ProposalStore.class).newest(key).orElseThrow();
        return new Settlement(key, primary.now(key).version(), proposal.as(), proposal.grounds(), Set.of());
    }

    private DecidedBy by() {
        return new DecidedBy(
                DeciderKind.BOARD,
                null,
                null,
                Set.of(new UserName("eve"), new UserName("fay"), new UserName("gil")),
                primary.office().the(AccessService.class).signedIn().actor());
    }

    private ProposalService proposals() {
        return primary.office().the(ProposalService.class);
    }

    private DecisionService decisions() {
        return primary.office().the(DecisionService.class);
    }
}
