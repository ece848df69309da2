package org.proviso.review.queue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.journey.Primary;

/** Lists that people named. */
class SavedViewServiceTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final QueueFilter REJECTS = QueueFilter.all(ELECTION).with(QueueColumn.OUTLOOK, "reject");

    private static List<String> names(TestOffice office, String who) {
        return as(who, () -> office.the(SavedViewService.class).yours(ELECTION)).stream()
                .map(SavedView::viewName)
                .toList();
    }

    @OnBothDatabases
    void a_view_is_its_person_s_own_and_is_named_anew_and_removed(TestOffice office) {
        Primary.loaded(office);
        SavedViewService views = office.the(SavedViewService.class);
        as("ada", () -> accepted(views.save(REJECTS, " To reject ")));
        as("ada", () -> accepted(views.save(REJECTS.sortedBy(QueueSort.AGE, false), "Old ones")));
        as("ben", () -> accepted(views.save(REJECTS, "To reject")));
        assertThat(names(office, "ada")).containsExactly("Old ones", "To reject");
        SavedView kept = as("ada", () -> views.yours(ELECTION)).get(1);
        assertThat(QueueFilterText.read(ELECTION, kept.shown())).isEqualTo(REJECTS);
        as("ada", () -> accepted(views.rename(ELECTION, kept.viewNo(), "Rejections")));
        assertThat(names(office, "ada")).containsExactly("Old ones", "Rejections");
        as("ada", () -> accepted(views.remove(ELECTION, kept.viewNo())));
        assertThat(names(office, "ada")).containsExactly("Old ones");
        assertThat(names(office, "ben")).containsExactly("To reject");
    }

    @OnBothDatabases
    void a_name_is_given_once_and_is_no_empty_one_and_what_is_gone_is_not_named(TestOffice office) {
        Primary.loaded(office);
        SavedViewService views = office.the(SavedViewService.class);
        as("ada", () -> accepted(views.save(REJECTS, "Mine")));
        int number = as("ada", () -> views.yours(ELECTION)).get(0).viewNo();
        assertThat(as("ada", () -> views.save(REJECTS, "mine")).refusals())
                .extracting(Refusal::why)
                .containsExactly(Why.NUMBER_TAKEN);
        assertThat(as("ada", () -> views.save(REJECTS, "  ")).refusals())
                .extracting(Refusal::field)
                .containsExactly("name");
        assertThat(as("ada", () -> views.save(REJECTS, "x".repeat(61))).isRefused())
                .isTrue();
        as("ada", () -> accepted(views.rename(ELECTION, number, "MINE")));
        assertThat(as("ben", () -> views.remove(ELECTION, number)).isRefused()).isTrue();
        as("ada", () -> accepted(views.remove(ELECTION, number)));
        assertThat(as("ada", () -> views.rename(ELECTION, number, "Again")).isRefused())
                .isTrue();
        assertThat(as("ada", () -> views.remove(ELECTION, number)).isRefused()).isTrue();
        assertThat(names(office, "ada")).isEmpty();
    }

    @OnBothDatabases
    void nobody_keeps_more_views_than_a_page_can_show_or_any_once_the_election_is_closed(TestOffice office) {
        Primary.loaded(office);
        SavedViewService views = office.the(SavedViewService.class);
        for (int i = 0; i < 30; i++) {
            String name = "View " + i;
            as("ada", () -> accepted(views.save(REJECTS, name)));
        }
        assertThat(as("ada", () -> views.save(REJECTS, "One more")).isRefused()).isTrue();
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(ELECTION);
            return true;
        });
        assertThat(as("ben", () -> views.save(REJECTS, "Late")).refusals())
                .extracting(Refusal::why)
                .containsExactly(Why.ELECTION_CLOSED);
        assertThat(names(office, "ada")).hasSize(30);
    }
}
