package org.proviso.review.acts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.CasesReady.key;

import java.util.List;
import java.util.Map;
import org.proviso.access.NotPermittedException;
import org.proviso.board.CasesReady;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.ActResults;
import org.proviso.core.act.Refusal;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.replay.CaseReplay;

/** Counting what the rules reject is nobody's act alone, and none without its place in the law. */
class CountAgainstTheRulesTest {

    private static final EnvelopeNumber LATE = CasesReady.LATE.get(0);
    private static final EnvelopeNumber VOTED = new EnvelopeNumber("P-1017");
    private static final String PLACE = "Example Election Code (invented) 5.6 (2020)";

    private static ActResult<EnvelopeCase> propose(
            CasesReady cases, EnvelopeNumber envelope, String reference, String because) {
        return as(
                "ada",
                () -> cases.office()
                        .the(ProposalService.class)
                        .propose(new ProposeOutcome(
                                key(envelope.value()),
                                cases.version(envelope),
                                DecisionOutcome.COUNT,
                                List.of(),
                                reference,
                                because)));
    }

    private static Map<String, Object> proposed(CasesReady cases) {
        List<LedgerEntry> chain = cases.office()
                .the(LedgerService.class)
                .read(LedgerChain.of(key("P-1012").electionId()), 0, 1_000);
        return chain.stream()
                .filter(entry -> entry.act().equals("proposed"))
                .reduce((first, second) -> second)
                .orElseThrow()
                .payload();
    }

    @OnBothDatabases
    void it_takes_a_place_in_the_law_and_a_second_reader(TestOffice office) {
        CasesReady cases = CasesReady.in(office).worked(LATE);
        assertThat(propose(cases, LATE, " ", "").refusals())
                .extracting(Refusal::why)
                .containsExactly(Refusal.Why.NO_REFERENCE, Refusal.Why.DEPARTURE_WITHOUT_REASON);
        assertThat(cases.now(LATE).state()).isEqualTo(CaseState.IN_REVIEW);
        EnvelopeCase waits = ActResults.accepted(propose(cases, LATE, PLACE, "The clerk of the day erred."));
        assertThat(waits.state()).isEqualTo(CaseState.PROPOSED);
        assertThat(proposed(cases))
                .containsEntry("against_rules", "reject")
                .containsEntry("known_to_have_voted", false);
        ProposalService proposals = office.the(ProposalService.class);
        assertThatThrownBy(() -> as("ada", () -> proposals.secondReview(waits.key(), waits.version(), true, "")))
                .isInstanceOf(NotPermittedException.class);
        assertThat(office.the(CaseReplay.class).replay(waits.key().electionId()).first())
                .isEmpty();
        EnvelopeCase ready =
                ActResults.accepted(as("ben", () -> proposals.secondReview(waits.key(), waits.version(), true, "")));
        assertThat(ready.state()).isEqualTo(CaseState.READY);
        assertThat(office.the(CaseReplay.class).replay(waits.key().electionId()).first())
                .isEmpty();
    }

    @OnADatabase
    void a_count_over_a_known_other_vote_says_so_in_its_record(TestOffice office) {
        CasesReady cases = CasesReady.in(office).worked(VOTED);
        assertThat(propose(cases, VOTED, "", "The mail ballot was not hers.").refusals())
                .extracting(Refusal::words)
                .containsExactly("This goes against the rules' answer, which is: reject. Records show that the voter"
                        + " already voted. To count it needs a legal reference.");
        EnvelopeCase waits = ActResults.accepted(propose(cases, VOTED, PLACE, "The mail ballot was not hers."));
        assertThat(waits.state()).isEqualTo(CaseState.PROPOSED);
        assertThat(proposed(cases)).containsEntry("known_to_have_voted", true);
    }

    @OnADatabase
    void a_count_with_the_rules_goes_to_the_decider_and_its_record_is_as_before(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(List.of(CasesReady.COUNT.get(0)));
        assertThat(cases.now(CasesReady.COUNT.get(0)).state()).isEqualTo(CaseState.READY);
        assertThat(proposed(cases)).doesNotContainKeys("against_rules", "known_to_have_voted");
        assertThat(office.the(CaseReplay.class)
                        .replay(key("P-1012").electionId())
                        .first())
                .isEmpty();
    }
}
