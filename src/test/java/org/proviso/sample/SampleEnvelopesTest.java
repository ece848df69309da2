package org.proviso.sample;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Code;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.ReceiptNumber;
import org.proviso.sample.county.ElectionPlan;
import org.proviso.sample.county.FileRow;

class SampleEnvelopesTest {

    @Test
    void the_generator_calls_none_of_the_code_it_is_to_test() {
        noClasses()
                .that()
                .haveSimpleNameNotEndingWith("Test")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.proviso.core.matching..",
                        "org.proviso.core.rules..",
                        "org.proviso.core.adjudication..",
                        "org.proviso.core.contests..")
                .check(new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
                        .importPackages("org.proviso.sample"));
    }

    @Test
    void every_signed_envelope_has_a_picture_with_ink_on_it() throws IOException {
        for (SampleElection election : Made.both()) {
            for (FileRow envelope : Made.table(election, "envelopes.csv")) {
                boolean signed = !envelope.get("voter_signed").equals("no");
                assertThat(envelope.blank("signature_image")).isEqualTo(!signed);
                if (signed) {
                    assertThat(ink(election.pictures().get(envelope.get("signature_image"))))
                            .isBetween(60, 12_000);
                }
            }
        }
    }

    @Test
    void every_signature_on_file_is_of_someone_on_the_roll_and_can_be_read() throws IOException {
        for (SampleElection election : Made.both()) {
            Set<String> roll = Made.roll(election).keySet();
            for (Map.Entry<String, byte[]> picture : election.pictures().entrySet()) {
                assertThat(ink(picture.getValue())).as(picture.getKey()).isPositive();
                if (picture.getKey().startsWith("signatures/roll/")) {
                    String file = picture.getKey().substring("signatures/roll/".length());
                    assertThat(roll).contains(file.substring(0, file.indexOf('-')));
                }
            }
        }
    }

    @Test
    void every_voter_behind_an_envelope_has_a_signature_on_file() {
        for (SampleElection election : Made.both()) {
            for (FileRow truth : election.truth()) {
                String path = "signatures/roll/" + truth.get("voter_id") + "-1.png";
                assertThat(election.pictures().containsKey(path)).isEqualTo(!truth.blank("voter_id"));
            }
        }
    }

    private static int ink(byte[] png) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(image.getWidth()).isEqualTo(360);
        assertThat(image.getHeight()).isEqualTo(110);
        int dark = 0;
        for (int i = 0; i < 360 * 110; i++) {
            dark += (image.getRGB(i % 360, i / 360) & 0xff) < 128 ? 1 : 0;
        }
        return dark;
    }

    @Test
    void one_transmittal_never_came_and_one_is_wrong_by_one() {
        Map<String, Long> counted = Made.table(Made.GENERAL, "envelopes.csv").stream()
                .filter(row -> !row.blank("voting_location"))
                .collect(Collectors.groupingBy(row -> row.get("voting_location"), Collectors.counting()));
        List<FileRow> transmittals = Made.table(Made.GENERAL, "transmittals.csv");
        assertThat(counted).hasSize(transmittals.size() + 1);
        List<Long> differences = transmittals.stream()
                .map(row -> Long.parseLong(row.get("returned")) - counted.get(row.get("voting_location")))
                .filter(difference -> difference != 0)
                .toList();
        assertThat(differences).containsExactly(1L);
        assertThat(transmittals)
                .allMatch(row -> number(row, "issued") == number(row, "returned")
                        && number(row, "supplied")
                                == number(row, "issued") + number(row, "spoiled") + number(row, "unused"));
    }

    private static int number(FileRow row, String column) {
        return Integer.parseInt(row.get(column));
    }

    @Test
    void envelopes_use_the_office_s_own_words() {
        for (SampleElection election : Made.both()) {
            for (FileRow row : Made.table(election, "envelopes.csv")) {
                assertThat(Code.find(Envelope.Source.class, row.get("source"))).isPresent();
                assertThat(Code.find(Envelope.Condition.class, row.get("envelope_condition")))
                        .isPresent();
                assertThat(Code.find(Envelope.VoterSignature.class, row.get("voter_signed")))
                        .isPresent();
                states(row).forEach(SampleEnvelopesTest::isState);
            }
            for (FileRow row : Made.table(election, "mail-ballots.csv")) {
                assertThat(Code.find(MailBallot.State.class, row.get("state"))).isPresent();
            }
        }
    }

    private static List<String> states(FileRow row) {
        return row.blank("field_states")
                ? List.of()
                : List.of(row.get("field_states").split(";"));
    }

    private static void isState(String pair) {
        String[] parts = pair.split("=");
        assertThat(Code.find(Envelope.Field.class, parts[0])).isPresent();
        assertThat(Code.find(Envelope.FieldState.class, parts[1])).isPresent();
    }

    @Test
    void an_empty_box_that_has_a_state_is_empty() {
        for (SampleElection election : Made.both()) {
            for (FileRow row : Made.table(election, "envelopes.csv")) {
                states(row)
                        .forEach(pair -> assertThat(row.blank(pair.substring(0, pair.indexOf('='))))
                                .isTrue());
            }
        }
    }

    @Test
    void receipts_and_mail_ballot_serials_are_given_once() {
        for (SampleElection election : Made.both()) {
            assertThat(Made.table(election, "envelopes.csv").stream().map(row -> row.get("receipt_no")))
                    .doesNotHaveDuplicates();
            assertThat(Made.table(election, "mail-ballots.csv").stream().map(row -> row.get("ballot_serial")))
                    .doesNotHaveDuplicates();
        }
    }

    @Test
    void every_receipt_has_its_check_digit() {
        for (SampleElection election : Made.both()) {
            assertThat(Made.table(election, "envelopes.csv"))
                    .allMatch(row -> CheckedReceipt.find(row.get("receipt_no"))
                            .map(ReceiptNumber::value)
                            .equals(Optional.of(row.get("receipt_no"))));
        }
    }

    @Test
    void only_named_scenarios_bring_a_check_in_or_an_accepted_mail_ballot_of_the_voter() {
        for (SampleElection election : Made.both()) {
            Map<String, String> scenarios = election.truth().stream()
                    .filter(row -> !row.blank("voter_id"))
                    .collect(Collectors.toMap(
                            row -> row.get("voter_id"), row -> row.get("scenario"), (first, second) -> first));
            Made.table(election, "check-ins.csv").stream()
                    .filter(row -> row.get("kind").equals("regular") && scenarios.containsKey(row.get("voter_id")))
                    .forEach(row ->
                            assertThat(scenarios.get(row.get("voter_id"))).startsWith("check"));
            Made.table(election, "mail-ballots.csv").stream()
                    .filter(row -> scenarios.containsKey(row.get("voter_id")))
                    .forEach(row ->
                            assertThat(scenarios.get(row.get("voter_id"))).startsWith("mail_"));
        }
    }

    @Test
    void extended_hours_are_between_eight_and_nine_at_one_location() {
        List<FileRow> truths = Made.scenario(Made.PRIMARY, "extended_hours");
        assertThat(truths).hasSize(12);
        for (FileRow truth : truths) {
            FileRow envelope = Made.envelopes(Made.PRIMARY).get(truth.get("envelope_no"));
            assertThat(LocalDateTime.parse(envelope.get("cast_at")))
                    .isBetween(ElectionPlan.PRIMARY.at(20, 0), ElectionPlan.PRIMARY.at(21, 0));
            assertThat(envelope.get("voting_location")).isEqualTo(ElectionPlan.PRIMARY.lateLocation());
            assertThat(envelope.get("extended_hours")).isEqualTo("yes");
        }
        assertThat(Made.PRIMARY.electionYaml())
                .contains("until: 2026-08-04T21:00")
                .contains("scope: " + ElectionPlan.PRIMARY.lateLocation());
    }
}
