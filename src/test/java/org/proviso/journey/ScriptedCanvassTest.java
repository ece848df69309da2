package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.proviso.notices.NoticeKind;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.news.DeadlineService;
import org.proviso.review.replay.AssessmentReplay;
import org.proviso.review.replay.CaseReplay;

/**
 * The canvass of the sample general election, from loading to closing, through the services alone: every envelope is
 * settled as its truth file says, every number adds up, and ledger and assessments prove it.
 */
class ScriptedCanvassTest {

    @TempDir
    private Path temporary;

    @OnBothDatabases
    void all_240_envelopes_are_settled_and_the_election_is_closed(TestOffice services) throws IOException {
        Canvass canvass = new Canvass(services);
        Office office = canvass.office();
        Telling letters = new Telling(office, Canvass.ID);
        canvass.load();
        canvass.review();
        canvass.at(4, 15, 0);
        assertThat(letters.send(NoticeKind.ASK, new UserName("jon"), LocalDateTime.of(2026, 11, 4, 14, 30)))
                .isPositive();
        canvass.at(9, 10, 0);
        canvass.mailBallotsDecided(temporary);
        assertThat(canvass.cure()).isPositive();
        canvass.review();
        canvass.at(10, 17, 1);
        assertThat(office.the(DeadlineService.class).recordPassedDeadlines(new ElectionId(Canvass.ID)))
                .isNotEmpty();
        canvass.review();
        int first = canvass.meet(LocalDateTime.of(2026, 11, 12, 9, 0));
        canvass.at(13, 8, 0);
        canvass.review();
        int second = canvass.meet(LocalDateTime.of(2026, 11, 13, 9, 0));
        assertThat(canvass.states())
                .as("nothing is left open: %s", canvass.openQuestions())
                .containsOnlyKeys(CaseState.DECIDED, CaseState.SENT_ON, CaseState.ENDED);
        assertThat(first + second).isEqualTo(240 - 4 - 2);
        canvass.settledAsTheTruthSays();
        int ballots = canvass.release(2);
        assertThat(letters.send(NoticeKind.OUTCOME, new UserName("carl"), LocalDateTime.of(2026, 11, 13, 9, 0)))
                .isPositive();
        closes(canvass, ballots);
        proves(services);
    }

    private static void closes(Canvass canvass, int ballots) {
        AddingUp adding = new AddingUp(canvass.office(), Canvass.ID);
        assertThat(adding.close().refusals())
                .as("the return that is one too many is found")
                .allSatisfy(refusal -> assertThat(refusal.why()).isEqualTo(Why.OUT_OF_BALANCE))
                .anySatisfy(refusal -> assertThat(refusal.words()).startsWith("Birch Hall Fire Station sent back 20"));
        assertThat(missing(canvass))
                .extracting(ClosingLine::words)
                .startsWith("1 voting location without its return")
                .last()
                .isEqualTo("1 total out of balance");
        adding.noteTheUsual(2);
        adding.lateReturn("Ansel Township Hall", canvass.receivedFrom("Ansel Township Hall"));
        adding.clearUp("Birch Hall Fire Station", 19);
        adding.note(CanvassService.COUNTY, Figure.TABULATED, ballots, "Tabulator's report.");
        Map<EnvelopeNumber, Decision> decided =
                canvass.office().the(DecisionService.class).standing(new ElectionId(Canvass.ID));
        long counted = decided.values().stream()
                .filter(decision -> decision.as() != DecisionOutcome.REJECT)
                .count();
        adding.note(CanvassService.COUNTY, Figure.CREDITED, (int) counted, "Voter-credit list.");
        assertThat(missing(canvass)).isEmpty();
        CanvassService figures = canvass.office().the(CanvassService.class);
        assertThat(accepted(as("carl", () -> figures.keepDailyFigures(new ElectionId(Canvass.ID), Map.of()))))
                .isEmpty();
        assertThat(accepted(adding.close())).isEqualTo(head(canvass));
        assertThat(why(adding.close())).as("it is closed once").isEqualTo(Why.ELECTION_CLOSED);
    }

    private static List<ClosingLine> missing(Canvass canvass) {
        return as("carl", () -> canvass.office().the(CanvassService.class).missing(new ElectionId(Canvass.ID)))
                .missing();
    }

    private static ChainHead head(Canvass canvass) {
        return canvass.office().the(LedgerService.class).head(LedgerChain.of(new ElectionId(Canvass.ID)));
    }

    private static void proves(TestOffice services) {
        assertThat(services.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(Canvass.ID)))
                        .isWhole())
                .isTrue();
        TableComparison cases = services.the(CaseReplay.class).replay(new ElectionId(Canvass.ID));
        assertThat(cases.isWhole()).as("%s", cases).isTrue();
        assertThat(services.the(AssessmentReplay.class).replay(new ElectionId(Canvass.ID)))
                .satisfies(verdict -> {
                    assertThat(verdict.differing()).as("%s", verdict.first()).isZero();
                    assertThat(verdict.agreeing()).isGreaterThan(240 * 3);
                });
    }
}
