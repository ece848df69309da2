package org.proviso.review.acts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.util.List;
import org.proviso.access.NotPermittedException;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.intake.LoadedOffice;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.review.CaseState;
import org.proviso.review.facts.CaseNote;
import org.proviso.review.file.CaseFileService;

/** Notes on a case. */
class NoteServiceTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);

    private static List<CaseNote> read(TestOffice office, String who, EnvelopeKey key) {
        return as(who, () -> office.the(CaseFileService.class).open(key))
                .orElseThrow()
                .work()
                .notes();
    }

    @OnBothDatabases
    void a_note_is_read_by_everybody_with_the_case_and_corrected_by_a_newer_one(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        int version = primary.now(key).version();
        NoteService notes = office.the(NoteService.class);
        as("ada", () -> accepted(notes.write(key, " The voter calls on Friday. ")));
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("note_written");
        assertThat(entry.line()).doesNotContain("Friday");
        as("ada", () -> accepted(notes.correct(key, 1, "The voter calls on Monday.")));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("note_corrected");
        for (String reader : List.of("ben", "dora", "carl")) {
            assertThat(read(office, reader, key))
                    .as(reader)
                    .extracting(CaseNote::words, CaseNote::fullName, CaseNote::corrected)
                    .containsExactly(
                            org.assertj.core.groups.Tuple.tuple("The voter calls on Friday.", "ada", true),
                            org.assertj.core.groups.Tuple.tuple("The voter calls on Monday.", "ada", false));
        }
        assertThat(primary.now(key).version())
                .as("nobody's work is stale by it")
                .isEqualTo(version);
        assertThat(office.the(ElectionReplayService.class).replay(PRIMARY).isWhole())
                .isTrue();
    }

    @OnBothDatabases
    void nobody_corrects_another_ones_note_or_one_that_was_corrected_or_writes_nothing(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        NoteService notes = office.the(NoteService.class);
        as("ada", () -> accepted(notes.write(key, "First.")));
        assertThat(why(as("ben", () -> notes.correct(key, 1, "Mine.")))).isEqualTo(Why.NOT_WITH_YOU);
        assertThat(why(as("ada", () -> notes.correct(key, 2, "There is none."))))
                .isEqualTo(Why.NOT_WITH_YOU);
        as("ada", () -> accepted(notes.correct(key, 1, "Second.")));
        assertThat(why(as("ada", () -> notes.correct(key, 1, "Twice.")))).isEqualTo(Why.NOTHING_NEW);
        assertThat(field(as("ada", () -> notes.write(key, " ")))).isEqualTo("words");
        assertThat(field(as("ada", () -> notes.write(key, "x".repeat(4_001))))).isEqualTo("words");
        assertThatThrownBy(() -> as("ida", () -> notes.write(key, "From the release team.")))
                .isInstanceOf(NotPermittedException.class);
        assertThat(read(office, "ada", key)).hasSize(2);
    }

    @OnBothDatabases
    void a_decided_case_is_noted_on_until_the_election_is_closed(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(3, 10, 0);
        EnvelopeKey key = primary.envelope("in_order");
        new Deciding(primary).settled(key);
        NoteService notes = office.the(NoteService.class);
        as("eve", () -> accepted(notes.write(key, "The voter thanked us.")));
        assertThat(primary.now(key).state()).isEqualTo(CaseState.DECIDED);
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(PRIMARY);
            return true;
        });
        assertThat(why(as("eve", () -> notes.write(key, "Too late.")))).isEqualTo(Why.ELECTION_CLOSED);
        assertThat(why(as("eve", () -> notes.correct(key, 1, "Too late.")))).isEqualTo(Why.ELECTION_CLOSED);
    }
}
