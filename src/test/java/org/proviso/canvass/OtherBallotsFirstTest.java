package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.LATE;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.Sitting.done;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.board.BoardMotion;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.board.Sitting;
import org.proviso.board.motion.DecideAsOfficial;
import org.proviso.board.motion.OfficialService;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.RulesService;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.release.ReleaseService;

/** Under a rule as Colorado's, nothing is decided before the office recorded that all other ballots are counted. */
class OtherBallotsFirstTest {

    private static final ElectionId ELECTION = new ElectionId(CasesReady.ID);
    private static final String RULE = InformationRules.DECISION_AFTER_ALL_OTHERS.key();
    private static final List<EnvelopeNumber> ONE = COUNT.subList(0, 1);

    @OnBothDatabases
    void a_board_moves_and_closes_no_decision_before_and_the_page_of_what_is_missing_leads_there(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT).toReject(LATE);
        Staff.hire(office, "carl", Role.SUPERVISOR);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT).put(LATE);
        BoardMotion voted = board.voted(board.move(MotionKind.COUNT, ONE), "yes yes yes");
        cases.ruled(RULE, "yes");
        closed(board.close(voted), office);
        as("eve", () -> done(board.motions().withdraw(voted.key(), voted.version())));
        closed(board.move(MotionKind.COUNT, ONE), office);
        closed(board.move(MotionKind.REJECT, LATE, Reason.REGISTERED_LATE), office);
        ClosingLine line = missing(office).get(ClosingStep.OTHER_BALLOTS);
        assertThat(line.which())
                .singleElement()
                .asString()
                .contains("Record on the Release page that all other ballots are counted.");
        assertThat(line.step().path()).isEqualTo("release");

        as("carl", () -> done(office.the(ReleaseService.class).recordOtherBallotsComplete(ELECTION)));
        assertThat(missing(office)).doesNotContainKey(ClosingStep.OTHER_BALLOTS);
        board.closed(board.move(MotionKind.COUNT, ONE), "yes yes yes");
        Sitting.settled(board.closed(board.move(MotionKind.REJECT, LATE, Reason.REGISTERED_LATE), "yes yes yes"));
    }

    @OnBothDatabases
    void an_official_decides_nothing_before(TestOffice office) {
        CasesReady cases =
                CasesReady.in(office).ruled("decider.kind", "official").toCount(COUNT);
        Staff.hire(office, "carl", Role.SUPERVISOR);
        cases.ruled(RULE, "yes");
        closed(decide(cases), office);
        as("carl", () -> done(office.the(ReleaseService.class).recordOtherBallotsComplete(ELECTION)));
        done(decide(cases));
    }

    /** The last gate before any decision is written, whoever votes. */
    @OnBothDatabases
    void nothing_is_settled_before(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(2, 12, 0);
        office.jdbc()
                .sql("insert into county_ruling values (?, ?, 'yes', 'A. Reyes', ?, 'letter of counsel')")
                .params(Primary.ID, RULE, primary.day())
                .update();
        office.inTransaction(() -> office.the(RulesService.class).keep(ELECTION));
        assertThatThrownBy(() -> new Deciding(primary).settled(primary.envelope("in_order")))
                .hasMessageContaining("Record on the Release page");
    }

    private static ActResult<?> decide(CasesReady cases) {
        Map<EnvelopeNumber, Integer> seen = new LinkedHashMap<>();
        ONE.forEach(envelope -> seen.put(envelope, cases.version(envelope.value())));
        return as(
                "eve",
                () -> cases.office()
                        .the(OfficialService.class)
                        .decide(new DecideAsOfficial(ELECTION, MotionKind.COUNT, seen, Set.of(), List.of(), "", "")));
    }

    /** Refused with the place in the law. */
    private static void closed(ActResult<?> step, TestOffice office) {
        assertThat(step.refusals()).extracting(Refusal::why).containsOnly(Refusal.Why.GATE_NOT_OPEN);
        assertThat(step.refusals())
                .allSatisfy(refusal -> assertThat(refusal.reference())
                        .isEqualTo(office.the(RulesService.class)
                                .book(ELECTION)
                                .pack()
                                .of(InformationRules.DECISION_AFTER_ALL_OTHERS)
                                .reference()));
    }

    private static Map<ClosingStep, ClosingLine> missing(TestOffice office) {
        Map<ClosingStep, ClosingLine> lines = new LinkedHashMap<>();
        as("carl", () -> office.the(CanvassService.class).missing(ELECTION))
                .missing()
                .forEach(line -> lines.put(line.step(), line));
        return lines;
    }
}
