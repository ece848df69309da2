package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.election.FolderRecords;
import org.proviso.intake.IntakeService;
import org.proviso.review.facts.CaseRecordsService;

/** A case over the tables reads as it does over the folder they were loaded from, byte for byte. */
class CaseRecordsTest {

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static ElectionFolder load(TestOffice office, String sample) {
        Path folder = Path.of("sample-cases", sample);
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        accepted(office.the(ElectionLoadService.class).load(folder));
        office.jdbc().sql("analyze").update(); // a server does so by itself soon after a load
        return ElectionFolder.read(folder);
    }

    private static Pages overFolder(ElectionFolder folder, Map<EnvelopeNumber, Link> links) {
        return Pages.of(new FolderRecords(folder, links), folder.envelopes(), links);
    }

    private static Pages overTables(TestOffice office, ElectionId election, Map<EnvelopeNumber, Link> links) {
        return Pages.of(
                office.the(CaseRecordsService.class).of(election, links),
                office.the(IntakeService.class).envelopes(election),
                links);
    }

    private static void compare(TestOffice office, String sample, int envelopes) {
        ElectionFolder folder = load(office, sample);
        ElectionId id = folder.election().id();
        Map<EnvelopeNumber, Link> presumed = Pages.presumedLinks(folder);
        Pages folders = overFolder(folder, presumed);
        assertThat(folders.byEnvelope()).hasSize(envelopes);
        same(overTables(office, id, presumed), folders);
        Map<EnvelopeNumber, Link> confirmed = Pages.confirmed(presumed);
        folders = overFolder(folder, confirmed);
        Pages tables = overTables(office, id, confirmed);
        same(tables, folders);
        System.out.printf(
                "%s: %d cases of %s assessed and explained in %d ms over the tables, %d ms over the folder%n",
                office.kind(), envelopes, id, tables.millis(), folders.millis());
    }

    private static void same(Pages tables, Pages folder) {
        assertThat(tables.byEnvelope().keySet()).isEqualTo(folder.byEnvelope().keySet());
        folder.byEnvelope()
                .forEach((number, page) -> assertThat(tables.byEnvelope().get(number))
                        .as("the page of " + number)
                        .isEqualTo(page));
    }

    @OnBothDatabases
    void every_page_of_the_primary_is_the_same_over_the_tables_and_over_the_folder(TestOffice office) {
        compare(office, "tamarack-primary", 60);
    }

    @OnBothDatabases
    void every_page_of_the_general_election_with_its_state_list_is_the_same_too(TestOffice office) {
        compare(office, "tamarack-general", 240);
    }

    @OnBothDatabases
    void all_envelopes_of_one_voter_come_through_the_links(TestOffice office) {
        ElectionFolder folder = load(office, "tamarack-primary");
        VoterId voter = folder.voters().keySet().iterator().next();
        EnvelopeNumber first = folder.envelopes().get(0).envelopeNo();
        EnvelopeNumber fifth = folder.envelopes().get(4).envelopeNo();
        Link link = new Link(VoterIdentityFact.CONFIRMED, voter, 1, List.of());
        Records records =
                office.the(CaseRecordsService.class).of(folder.election().id(), Map.of(fifth, link, first, link));
        assertThat(records.envelopesOf(voter))
                .containsExactly(folder.envelopes().get(0), folder.envelopes().get(4));
        assertThat(records.envelopesOf(new VoterId("nobody"))).isEmpty();
    }

    @OnBothDatabases
    void what_a_voter_brought_is_read_on_the_countys_clock(TestOffice office) {
        ElectionFolder folder = load(office, "tamarack-primary");
        ElectionId id = folder.election().id();
        EnvelopeNumber envelope = folder.envelopes().get(0).envelopeNo();
        LocalDateTime stamp = folder.election().date().plusDays(2).atTime(16, 59);
        LocalDateTime keyed = stamp.plusHours(18);
        OffsetDateTime keyedAt = keyed.atZone(folder.election().zone()).toOffsetDateTime();
        office.jdbc()
                .sql("insert into cure_evidence values (?, ?, 1, 'identification', ?, ?, 'hugh', 'State ID shown')")
                .params(id, envelope, stamp, keyedAt)
                .update();
        Records records = office.the(CaseRecordsService.class).of(id, Map.of());
        assertThat(records.cureEvidence(envelope))
                .containsExactly(new CureEvidence(Ask.IDENTIFICATION, stamp, keyed, "State ID shown"));
        assertThat(records.cureEvidence(folder.envelopes().get(1).envelopeNo())).isEmpty();
    }

    @OnBothDatabases
    void an_election_that_is_not_in_the_office_is_refused_by_name(TestOffice office) {
        assertThatThrownBy(() -> office.the(CaseRecordsService.class).of(new ElectionId("elsewhere-2026"), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elsewhere-2026");
    }
}
