package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.Code;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;

/** The one graph of a case, and the page that draws it. */
class CaseGraphTest {

    @ParameterizedTest
    @CsvSource({
        "RECEIVED, KEY TAKE PROPOSE_COUNT DECIDE RELEASE, RELEASED",
        "RECEIVED, KEY TAKE PROPOSE_LESS AGREE DECIDE, DECIDED",
        "RECEIVED, KEY TAKE PROPOSE_LESS RETURN TAKE GIVE_BACK, OPEN",
        "RECEIVED, KEY TAKE PROPOSE_LESS AGREE RECALL, OPEN",
        "IN_REVIEW, PROPOSE_LESS WITHDRAW, IN_REVIEW",
        "OPEN, ORDER RELEASE, RELEASED",
        "IN_REVIEW, PROPOSE_END SEND_ON REOPEN, OPEN",
        "IN_REVIEW, PROPOSE_END WITHDRAW PROPOSE_END RETURN, OPEN",
        "RECEIVED, KEY TAKE PROPOSE_END END REOPEN, OPEN",
        "DECIDED, REOPEN, OPEN",
        "DECIDED, ORDER, DECIDED",
        "SENT_ON, ORDER, DECIDED",
        "ENDED, ORDER REOPEN, OPEN"
    })
    void leads_a_case_by_the_acts_of_people(CaseState from, String acts, CaseState to) {
        CaseState state = from;
        for (String act : acts.split(" ")) {
            ActResult<CaseState> step = CaseGraph.step(state, CaseAct.valueOf(act));
            assertThat(step.refusals()).as(act + " from " + state).isEmpty();
            assertThat(CaseGraph.refusal(state, CaseAct.valueOf(act))).isEmpty();
            state = CaseGraph.after(state, CaseAct.valueOf(act));
            assertThat(step.ifAccepted()).contains(state);
        }
        assertThat(state).isEqualTo(to);
    }

    @ParameterizedTest
    @CsvSource({
        "OPEN, DECIDE",
        "IN_REVIEW, DECIDE",
        "PROPOSED, DECIDE",
        "DECIDED, DECIDE",
        "RECEIVED, TAKE",
        "IN_REVIEW, TAKE",
        "READY, RELEASE",
        "RELEASED, REOPEN",
        "SENT_ON, RELEASE",
        "IN_REVIEW, SEND_ON",
        "IN_REVIEW, END",
        "RECEIVED, END"
    })
    void refuses_an_act_out_of_its_turn(CaseState from, CaseAct act) {
        assertThat(CaseGraph.refusal(from, act))
                .hasValueSatisfying(refusal -> assertThat(refusal.why()).isEqualTo(Why.NOT_IN_THIS_STATE));
        assertThat(CaseGraph.step(from, act).isRefused()).isTrue();
        assertThatThrownBy(() -> CaseGraph.after(from, act)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void says_where_a_refused_act_would_be_in_turn() {
        assertThat(CaseGraph.refusal(CaseState.OPEN, CaseAct.RETURN)
                        .orElseThrow()
                        .words())
                .isEqualTo("The case is open; to return it must be one of: proposed, ready.");
    }

    @Test
    void leads_from_one_state_by_one_act_to_one_state() {
        assertThat(CaseGraph.all())
                .extracting(edge -> edge.from() + " " + edge.act())
                .doesNotHaveDuplicates();
    }

    @Test
    void reaches_every_state_uses_every_act_and_ends_only_with_release() {
        Set<CaseState> reached = EnumSet.of(CaseState.RECEIVED);
        CaseGraph.all().forEach(edge -> reached.add(edge.to()));
        Set<CaseState> left = EnumSet.allOf(CaseState.class);
        CaseGraph.all().forEach(edge -> left.remove(edge.from()));

        assertThat(reached).containsExactlyInAnyOrder(CaseState.values());
        assertThat(left).containsExactly(CaseState.RELEASED);
        assertThat(CaseGraph.all()).extracting(CaseGraph.Edge::act).contains(CaseAct.values());
    }

    /** Whatever people do, nothing is opened that was not decided last, and nothing is decided that was not ready. */
    @Property
    void opens_no_envelope_that_was_not_decided(@ForAll @Size(max = 60) List<CaseAct> acts) {
        CaseState state = CaseState.RECEIVED;
        for (CaseAct act : acts) {
            CaseState before = state;
            state = CaseGraph.step(state, act).ifAccepted().orElse(state);
            if (state == CaseState.RELEASED && before != state) {
                assertThat(before).isEqualTo(CaseState.DECIDED);
            }
            if (state == CaseState.DECIDED && before != state && act != CaseAct.ORDER) {
                assertThat(before).isEqualTo(CaseState.READY);
            }
        }
    }

    @Test
    void has_the_states_that_the_table_allows() throws IOException {
        String schema = Files.readString(Path.of("src/main/resources/db/migration/common/V013__review.sql"));
        Matcher check = Pattern.compile("check \\(state in \\(([^)]*'received'[^)]*)\\)")
                .matcher(schema);
        assertThat(check.find()).isTrue();
        assertThat(check.group(1).replaceAll("[\\s']", "").split(","))
                .containsExactly(
                        Arrays.stream(CaseState.values()).map(Code::code).toArray(String[]::new));
    }

    @Test
    void is_drawn_in_the_documentation_as_it_is() throws IOException {
        String page = Files.readString(Path.of("docs/case-states.md"));
        assertThat(page)
                .contains("```mermaid\n" + CaseGraphDrawing.mermaid() + "```\n")
                .contains("\n" + CaseGraphDrawing.tables());
    }
}
