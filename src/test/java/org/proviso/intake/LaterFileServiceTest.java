package org.proviso.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.files.EnvelopeRows;
import org.proviso.files.InputException;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;

/** Hugh loads a bag's worth of envelopes some days after the primary was loaded. */
class LaterFileServiceTest {

    private static final ElectionId ID = new ElectionId(LoadedOffice.ID);

    @TempDir
    Path folder;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static LaterFileService asHugh(TestOffice office) {
        LoadedOffice.primary(office);
        return office.the(LaterFileService.class);
    }

    /** What the sample's file says of an envelope, without its picture. */
    private static Map<String, String> sample(String number) throws IOException {
        try (CsvReader<NamedCsvRecord> rows =
                CsvReader.builder().ofNamedCsvRecord(Path.of("sample-cases", LoadedOffice.ID, "envelopes.csv"))) {
            Map<String, String> cells = new TreeMap<>(rows.stream()
                    .filter(row -> row.getField("envelope_no").equals(number))
                    .findFirst()
                    .orElseThrow()
                    .getFieldsAsMap());
            cells.replaceAll((column, text) -> text.contains(",") ? '"' + text + '"' : text);
            cells.put("signature_image", "");
            return cells;
        }
    }

    private static Map<String, String> changed(Map<String, String> cells, String... columnsAndTexts) {
        Map<String, String> changed = new TreeMap<>(cells);
        for (int i = 0; i < columnsAndTexts.length; i += 2) {
            changed.put(columnsAndTexts[i], columnsAndTexts[i + 1]);
        }
        return changed;
    }

    private static String receipt(int number) {
        return CheckedReceipt.of(String.valueOf(88_000_000 + number)).value();
    }

    @SafeVarargs
    private void envelopes(Map<String, String>... rows) throws IOException {
        Files.writeString(folder.resolve("envelopes.csv"), EnvelopeRows.text(rows));
    }

    private static Map<String, String> unkeyed(String number) {
        return Map.of(
                "envelope_no",
                number,
                "receipt_no",
                receipt(2),
                "ballot_style_cast",
                "T06-G",
                "field_states",
                "last_name=not_yet_keyed");
    }

    private static CaseState state(TestOffice office, String number) {
        return office.the(CaseStore.class)
                .find(new EnvelopeKey(ID, new EnvelopeNumber(number)))
                .orElseThrow()
                .state();
    }

    private static void assertWhole(TestOffice office) {
        assertThat(office.the(ElectionReplayService.class).replay(ID).compared())
                .allSatisfy(compared -> assertThat(compared.first()).isEmpty());
    }

    @OnBothDatabases
    void only_what_is_new_is_loaded_and_its_cases_open_assessed(TestOffice office) throws IOException {
        LaterFileService service = asHugh(office);
        envelopes(
                changed(sample("P-1001"), "envelope_no", "P-2101", "receipt_no", receipt(1)),
                unkeyed("P-2102"),
                sample("P-1002"),
                changed(sample("P-1003"), "last_name", "Otherwise"));
        LaterFiles looked = service.look(ID, folder);
        assertThat(looked.envelopes())
                .extracting(envelope -> envelope.envelopeNo().value())
                .containsExactly("P-2101", "P-2102");
        assertThat(looked.there()).containsExactly(new EnvelopeNumber("P-1002"));
        assertThat(looked.thereOtherwise()).containsExactly(new EnvelopeNumber("P-1003"));
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("election_loaded");

        LaterFiles loaded = accepted(service.load(ID, folder));

        assertThat(loaded).isEqualTo(looked);
        assertThat(state(office, "P-2101")).isEqualTo(CaseState.OPEN);
        assertThat(state(office, "P-2102")).isEqualTo(CaseState.RECEIVED);
        List<EnvelopeNumber> order = new ArrayList<>();
        office.the(IntakeService.class).envelopes(ID).forEach(envelope -> order.add(envelope.envelopeNo()));
        assertThat(order).endsWith(new EnvelopeNumber("P-2101"), new EnvelopeNumber("P-2102"));
        assertThat(office.the(IntakeService.class)
                        .envelope(ID, new EnvelopeNumber("P-1003"))
                        .orElseThrow()
                        .affirmation()
                        .name()
                        .last())
                .isNotEqualTo("Otherwise");
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("envelopes_filed");
        assertThat(entry.payload())
                .containsEntry("envelopes", List.of("P-2101", "P-2102"))
                .containsEntry("not_yet_keyed", List.of("P-2102"))
                .containsEntry("there_otherwise", List.of("P-1003"));
        assertWhole(office);
    }

    /** One voter's two envelopes: the second in a file that came later must not be counted beside the first. */
    @OnBothDatabases
    void an_envelope_of_a_voter_who_has_one_already_makes_both_look_at_each_other(TestOffice office)
            throws IOException {
        LaterFileService service = asHugh(office);
        envelopes(changed(sample("P-1001"), "envelope_no", "P-2101", "receipt_no", receipt(1)));
        accepted(service.load(ID, folder));
        assertThat(office.jdbc()
                        .sql("select count(distinct envelope_no) from link where voter_id = (select voter_id from link"
                                + " where envelope_no = 'P-2101' and voter_id is not null)"
                                + " and envelope_no in ('P-1001', 'P-2101')")
                        .query(Integer.class)
                        .single())
                .isEqualTo(2);
        assertThat(office.jdbc()
                        .sql("select count(*) from assessment where envelope_no = 'P-1001'")
                        .query(Integer.class)
                        .single())
                .as("the first envelope is assessed anew")
                .isGreaterThan(1);
        assertWhole(office);
    }

    @OnBothDatabases
    void the_same_files_again_change_nothing_and_returns_are_told_by_their_bag(TestOffice office) throws IOException {
        LaterFileService service = asHugh(office);
        envelopes(unkeyed("P-2102"));
        Files.writeString(folder.resolve("transmittals.csv"), """
                voting_location,day,bag,seal_out,seal_in,issued,spoiled,returned
                Library,2026-08-05,L1,11,11,1,0,1
                """);
        assertThat(accepted(service.load(ID, folder)).transmittals()).hasSize(1);
        int returns = office.the(IntakeService.class).transmittals(ID).size();
        ActResult<LaterFiles> again = service.load(ID, folder);
        assertThat(((ActResult.Refused<LaterFiles>) again).refusals().get(0).why())
                .isEqualTo(Why.NOTHING_NEW);
        Files.writeString(folder.resolve("transmittals.csv"), """
                voting_location,day,bag,seal_out,seal_in,issued,spoiled,returned
                Library,2026-08-05,L1,11,11,2,0,2
                """);
        assertThat(service.look(ID, folder).returnsThereOtherwise()).containsExactly("Library 2026-08-05 L1");
        assertThat(office.the(IntakeService.class).transmittals(ID)).hasSize(returns);
        assertWhole(office);
    }

    @OnBothDatabases
    void a_bad_row_refuses_the_whole_file(TestOffice office) throws IOException {
        LaterFileService service = asHugh(office);
        envelopes(unkeyed("P-2102"), changed(unkeyed("P-2103"), "ballot_style_cast", "no such", "receipt_no", ""));
        assertThatThrownBy(() -> service.load(ID, folder))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("envelopes.csv line 3, column ballot_style_cast");
        assertThat(office.the(IntakeService.class).envelope(ID, new EnvelopeNumber("P-2102")))
                .isEmpty();
        Files.delete(folder.resolve("envelopes.csv"));
        assertThatThrownBy(() -> service.look(ID, folder)).hasMessageContaining("choose one or both");
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.signIn("ines");
        assertThatThrownBy(() -> service.load(ID, folder)).isInstanceOf(NotPermittedException.class);
    }
}
