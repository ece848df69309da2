package org.proviso.files.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.files.InputAssert.refused;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.CountyRuling;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.files.UploadFolder;

class ElectionYamlReaderTest {

    static final String GOOD = """
            name: General Election
            date: 2026-11-03
            kind: general
            jurisdiction: us-co
            zone: America/Denver
            rule_pack: us-co
            decider: {members: 3, quorum: 2}
            office:
              name: Sorrel County Elections
              address: 1 Court Square, Millbrook 49871
              phone: 555-0100
              email: elections@sorrel.example
            polls_close: "19:00"
            languages: [en, es]
            """;

    @TempDir
    Path folder;

    @Test
    void an_election_sent_without_a_folder_is_named_by_its_name_and_date() throws IOException {
        assertThat(sent(GOOD)).isEqualTo("general-election-2026-11-03");
        assertThat(sent(GOOD.replace("name: General Election", "name: \" Comt\u00e9 d'Aulne: 2nd Primary \"")))
                .isEqualTo("comte-d-aulne-2nd-primary-2026-11-03");
        assertThat(sent(GOOD.replace("name: General Election", "name: \u9078\u6319")))
                .isEqualTo("election-2026-11-03");
        assertThat(sent(GOOD.replace("name: General Election", "name: " + "Long ".repeat(30))))
                .hasSizeLessThanOrEqualTo(60)
                .endsWith("long-2026-11-03");
    }

    private static String sent(String text) throws IOException {
        Path folder = UploadFolder.create();
        Path file = Files.writeString(folder.resolve("election.yaml"), text);
        try {
            return ElectionYamlReader.read(file).id().value();
        } finally {
            Files.delete(file);
            Files.delete(folder);
        }
    }

    @Test
    void reads_an_election_and_takes_its_id_from_the_folder() throws IOException {
        Election election = read(GOOD);

        assertThat(election.id().value()).isEqualTo(folder.getFileName().toString());
        assertThat(election.name()).isEqualTo("General Election");
        assertThat(election.date()).isEqualTo(LocalDate.of(2026, 11, 3));
        assertThat(election.zone().getId()).isEqualTo("America/Denver");
        assertThat(election.decider()).isEqualTo(new Election.DecidingBody(3, 2));
        assertThat(election.office().phone()).isEqualTo("555-0100");
        assertThat(election.pollsClose()).isEqualTo(LocalTime.of(19, 0));
        assertThat(election.languages()).containsExactly("en", "es");
        assertThat(election.orders()).isEmpty();
        assertThat(election.rulings()).isEmpty();
        assertThat(election.daysClosed()).isEmpty();
        assertThat(election.receipts()).isEqualTo(Election.Receipts.OWN);
        assertThat(election.office().hours()).isEmpty();
    }

    @Test
    void reads_that_receipts_have_a_check_digit_and_when_the_office_is_open() throws IOException {
        Election election =
                read(GOOD.replace("phone: 555-0100", "phone: 555-0100\n  hours: {en: Weekdays 8 to 5, es: De 8 a 5}")
                        + "receipts: check_digit\n");

        assertThat(election.receipts()).isEqualTo(Election.Receipts.CHECK_DIGIT);
        assertThat(election.office().hours()).isEqualTo(Map.of("en", "Weekdays 8 to 5", "es", "De 8 a 5"));
    }

    @Test
    void reads_orders_days_closed_and_rulings() throws IOException {
        Election election = read(GOOD + """
                        orders:
                          - {kind: extend, court: District Court, date: 2026-11-03, scope: Ward 2, standing: in_force, until: 2026-11-03T20:30}
                          - {kind: hold, court: District Court, standing: pending, envelopes: [E-1, E-2]}
                        days_closed: [2026-11-11]
                        rulings:
                          - {rule: cure_deadline, value: "8", signed_by: A. Reyes, on: 2026-10-01, ground: counsel's letter}
                        """);

        CourtOrder extended = election.orders().get(0);
        assertThat(extended.until()).isEqualTo(LocalDateTime.of(2026, 11, 3, 20, 30));
        assertThat(election.orders().get(1).envelopeNos())
                .containsExactly(new EnvelopeNumber("E-1"), new EnvelopeNumber("E-2"));
        assertThat(election.orders().get(1).date()).isNull();
        assertThat(election.daysClosed()).containsExactly(LocalDate.of(2026, 11, 11));
        assertThat(election.rulings())
                .containsExactly(new CountyRuling(
                        "cure_deadline", "8", "A. Reyes", LocalDate.of(2026, 10, 1), "counsel's letter"));
    }

    @Test
    void refuses_unknown_and_missing_keys() {
        fails(GOOD + "colour: red\n", 15, "colour", "is not a known key here");
        fails(GOOD.replace("phone:", "fone:"), 11, "office.fone", "is not a known key here");
        fails(GOOD.replace("kind: general\n", ""), 1, "kind", "is missing");
    }

    @Test
    void refuses_wrong_values() {
        fails(GOOD.replace("America/Denver", "Mountain"), 5, "zone", "\"Mountain\" is not a time zone");
        fails(GOOD.replace("general\n", "runoff\n"), 3, "kind", "\"runoff\" is not one of general, primary, special");
        fails(
                GOOD.replace("quorum: 2", "quorum: 4"),
                7,
                "decider.quorum",
                "must be from 1 to the number of members (3)");
        fails(GOOD.replace("{members: 3, quorum: 2}", "3"), 7, "decider", "must be keys with values");
        fails(GOOD.replace("\"19:00\"", "7pm"), 13, "polls_close", "is not a time of day");
        fails(GOOD.replace("[en, es]", "en"), 14, "languages", "must be a list");
        fails(GOOD + "orders:\n  - {kind: stop}\n", 16, "orders[1].kind", "is not one of extend");
        fails(GOOD + "rulings:\n  - {rule: x, on: 2026-10-01}\n", 16, "rulings[1].signed_by", "is missing");
    }

    private Election read(String text) throws IOException {
        return ElectionYamlReader.read(Files.writeString(folder.resolve("election.yaml"), text));
    }

    private void fails(String text, int line, String key, String reason) {
        refused(() -> read(text), "election.yaml", line, key, reason);
    }
}
