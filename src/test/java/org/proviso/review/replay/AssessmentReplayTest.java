package org.proviso.review.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.review.AssessedPrimary.ID;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.kept.AssessmentKind;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.review.AssessedPrimary;

/** Every stored assessment is made again; whatever somebody changed in a row is named. */
class AssessmentReplayTest {

    private static final int WAYS = 2 * 3 * 60;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    /** Each case assessed twice: by the load, and with its link confirmed. */
    private static AssessmentReplay replay(TestOffice office) {
        AssessedPrimary.load(office).assessConfirmed();
        return office.the(AssessmentReplay.class);
    }

    /** The row is first written as older rows are, with its texts as they are. */
    private static void breakRow(TestOffice office, String envelope, String change) {
        StoredAssessment stored =
                office.the(KeptAssessmentStore.class).between(new ElectionId(ID), envelope, envelope).stream()
                        .filter(one -> one.number() == 2 && one.origins().way() == AssessmentKind.PRESUMED)
                        .findFirst()
                        .orElseThrow();
        office.jdbc()
                .sql("update assessment set texts = null, facts = ?, content = ?"
                        + " where envelope_no = ? and assessment_no = 2 and way = 'presumed'")
                .params(stored.origins().facts(), stored.content(), envelope)
                .update();
        int changed = office.jdbc()
                .sql("update assessment set " + change
                        + " where envelope_no = ? and assessment_no = 2 and way = 'presumed'")
                .param(envelope)
                .update();
        assertThat(changed).isOne();
    }

    @OnBothDatabases
    void everything_comes_out_again_to_the_last_letter(TestOffice office) {
        ReplayVerdict verdict = replay(office).replay(new ElectionId(ID));
        assertThat(verdict).isEqualTo(new ReplayVerdict(WAYS, 0, 0, List.of()));
        assertThat(verdict.isWhole()).isTrue();
        assertThat(office.the(AssessmentReplay.class).replay(new ElectionId("elsewhere")))
                .isEqualTo(new ReplayVerdict(0, 0, 0, List.of()));
    }

    @OnBothDatabases
    void every_column_that_was_changed_is_named_with_its_envelope(TestOffice office) {
        AssessmentReplay replay = replay(office);
        String origins = "its content names facts, rules or a time other than those stored with it";
        String words = "its recommendation, reasons or held-apart mark differ from its content";
        breakRow(office, "P-1002", "facts = replace(facts, 'Same date of birth', 'Near date of birth')");
        breakRow(office, "P-1005", "as_of = timestamp '2026-08-08 09:00:00'");
        breakRow(office, "P-1010", "recommendation = 'reject', reasons = 'not_registered'");
        breakRow(office, "P-1020", "content = replace(content, '\"clear\"', '\"open\"')");
        breakRow(office, "P-1030", "facts = '{}'");
        breakRow(office, "P-1060", "content = ''");
        ReplayVerdict verdict = replay.replay(new ElectionId(ID));
        assertThat(verdict.first())
                .containsExactly(
                        difference("P-1002", origins),
                        difference("P-1005", origins),
                        difference("P-1010", words),
                        difference("P-1020", "recomputed, it differs in: answers"),
                        difference("P-1030", "it cannot be made again: \"facts\" is missing or has the wrong type"),
                        difference("P-1060", "it cannot be made again: at character 1: the text ends too soon"));
        assertThat(verdict.differing()).isEqualTo(6);
        assertThat(verdict.agreeing()).isEqualTo(WAYS - 6);
        assertThat(verdict.isWhole()).isFalse();
    }

    @OnBothDatabases
    void rows_with_their_texts_as_they_are_are_made_again_too(TestOffice office) {
        AssessmentReplay replay = replay(office);
        breakRow(office, "P-1002", "held_apart = held_apart");
        assertThat(replay.replay(new ElectionId(ID))).isEqualTo(new ReplayVerdict(WAYS, 0, 0, List.of()));
    }

    @OnBothDatabases
    void bytes_that_are_no_texts_are_named_with_their_envelope(TestOffice office) {
        AssessmentReplay replay = replay(office);
        int changed = office.jdbc()
                .sql("update assessment set texts = (select o.texts from assessment o where o.envelope_no = 'P-1002'"
                        + " and o.assessment_no = 2 and o.way = 'settled')"
                        + " where envelope_no = 'P-1002' and assessment_no = 2 and way = 'presumed'")
                .update();
        assertThat(changed).isOne();
        assertThat(office.jdbc()
                        .sql("update assessment set texts = ?"
                                + " where envelope_no = 'P-1005' and assessment_no = 2 and way = 'presumed'")
                        .param(new byte[] {1, 2, 3})
                        .update())
                .isOne();
        assertThat(replay.replay(new ElectionId(ID)).first())
                .containsExactly(
                        difference(
                                "P-1002", "its content names facts, rules or a time other than those stored with it"),
                        difference("P-1005", "it cannot be made again: at character 1: the text ends too soon"));
    }

    private static ReplayDifference difference(String envelope, String why) {
        return new ReplayDifference(new EnvelopeNumber(envelope), 2, AssessmentKind.PRESUMED, why);
    }

    @OnBothDatabases
    void what_another_version_of_the_engine_made_is_counted_apart_if_it_says_so_itself(TestOffice office) {
        AssessmentReplay replay = replay(office);
        breakRow(
                office,
                "P-1003",
                "engine_version = 0, content = replace(content, '\"engine_version\":" + Assessment.ENGINE_VERSION
                        + "', '\"engine_version\":0')");
        breakRow(office, "P-1004", "engine_version = 0");
        assertThat(replay.replay(new ElectionId(ID)))
                .isEqualTo(new ReplayVerdict(
                        WAYS - 2,
                        1,
                        1,
                        List.of(difference(
                                "P-1004", "its content says it was made from something else than its row"))));
    }

    @OnBothDatabases
    void rules_that_were_changed_since_break_every_assessment_made_under_them(TestOffice office) {
        AssessmentReplay replay = replay(office);
        office.jdbc()
                .sql(
                        "update resolved_pack set content = replace(content, '\"basis\":\"invented\"', '\"basis\":\"read\"')")
                .update();
        ReplayVerdict verdict = replay.replay(new ElectionId(ID));
        assertThat(verdict.differing()).isEqualTo(WAYS);
        assertThat(verdict.first())
                .hasSize(20)
                .allSatisfy(difference -> assertThat(difference.why())
                        .startsWith("it cannot be made again: The rules kept for tamarack-primary")
                        .contains("were changed"));
    }
}
