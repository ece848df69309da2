package org.proviso.journey;

import static org.proviso.journey.Office.as;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.database.TestOffice;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.SignatureComparison;

/**
 * One of many reviewers who act at random, by a seed, on whatever case they come upon: take, confirm, look, propose,
 * withdraw, give back. Others do the same, so that many acts are refused or stale.
 */
public final class BusyReviewer {

    /** An act that the office accepted, as the ledger names it, and the version the case has since. */
    public record Done(String act, EnvelopeNumber envelopeNo, UserName by, int version) {}

    private final TestOffice office;
    private final String name;
    private final Random random;
    private final List<EnvelopeKey> keys;

    /** What was worked on last is most often worked on next. */
    private @Nullable EnvelopeKey last;

    public BusyReviewer(TestOffice office, String name, long seed, List<EnvelopeKey> keys) {
        this.office = office;
        this.name = name;
        this.random = new Random(seed);
        this.keys = keys;
    }

    public static String name(int number) {
        return "reviewer" + number;
    }

    public static void hire(TestOffice office, int count) {
        for (int i = 0; i < count; i++) {
            Staff.hire(office, name(i), Role.REVIEWER);
        }
    }

    /** One act on one case, if it was accepted; a stale one or the victim of a deadlock throws. */
    public Optional<Done> act() {
        EnvelopeKey key = last != null && random.nextInt(3) > 0 ? last : keys.get(random.nextInt(keys.size()));
        EnvelopeCase seen = office.the(CaseService.class).find(key).orElseThrow();
        Optional<Done> done = as(name, () -> act(seen));
        done.ifPresent(accepted -> last = key);
        return done;
    }

    private Optional<Done> act(EnvelopeCase seen) {
        if (seen.state() == CaseState.PROPOSED || seen.state() == CaseState.READY) {
            return done("proposal_withdrawn", office.the(ProposalService.class).withdraw(seen.key(), seen.version()));
        }
        return name.equals(Key.text(seen.takenBy()))
                ? work(seen)
                : done("taken", office.the(CaseAssignmentService.class).take(seen.key(), seen.version()));
    }

    private Optional<Done> work(EnvelopeCase seen) {
        EnvelopeKey key = seen.key();
        return switch (random.nextInt(5)) {
            case 0 -> done("given_back", office.the(CaseAssignmentService.class).giveBack(key, seen.version()));
            case 1 -> looked(seen);
            case 2 -> proposed(seen);
            default -> linked(seen);
        };
    }

    private Optional<Done> linked(EnvelopeCase seen) {
        VoterId voter =
                office.the(LinkStore.class).newest(seen.key()).orElseThrow().voterId();
        return voter == null
                ? Optional.empty()
                : done(
                        "link_confirmed",
                        office.the(LinkService.class)
                                .confirm(new ConfirmLink(seen.key(), seen.version(), voter, "Compared by hand.")));
    }

    private Optional<Done> looked(EnvelopeCase seen) {
        SignatureComparison look = new SignatureComparison(
                seen.key(), seen.version(), SignatureComparison.Finding.AGREES, "Looked at closely.");
        return done("answer_given", office.the(AnswerService.class).recordSignatureComparison(look));
    }

    private Optional<Done> proposed(EnvelopeCase seen) {
        Assessment says = office.the(AssessmentService.class).now(seen.key()).settled();
        DecisionOutcome as = says.outcome().reasons().isEmpty() ? DecisionOutcome.COUNT : DecisionOutcome.REJECT;
        ProposeOutcome propose = new ProposeOutcome(
                seen.key(), seen.version(), as, says.outcome().reasons(), "Example Election Code 5.3", "As I see it.");
        return done("proposed", office.the(ProposalService.class).propose(propose));
    }

    private Optional<Done> done(String act, ActResult<EnvelopeCase> outcome) {
        return outcome instanceof ActResult.Accepted<EnvelopeCase> accepted
                ? Optional.of(new Done(
                        act,
                        accepted.now().key().envelopeNo(),
                        new UserName(name),
                        accepted.now().version()))
                : Optional.empty();
    }
}
