package org.proviso.files.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.files.InputAssert.refused;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.CountyRuling;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.Rules;
import org.proviso.files.PackText;

class RulePackReaderTest {

    private static final String ITEM = "moves.within_county";

    @TempDir
    Path folder;

    @Test
    void reads_a_pack_file_over_the_floor() {
        RulePack pack = RulePacks.load(PackText.of("example").in(folder).toString());
        assertThat(pack).isEqualTo(RulePacks.load("example"));
        assertThat(pack.illustrative()).isTrue();
        assertThat(pack.values()).containsKeys(Rules.REGISTRATION_BOUND_DAYS, Rules.MOVES);
        assertThat(RulePacks.bundled()).startsWith("us", "example").contains("us-ca", "us-dc", "us-wy");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from: .*| form: 2020-01-01 | .form | is not a known key here",
                "from: .*| | .from | is missing",
                "from: 2020-01-01 | from: 2020 | .from | is not a date",
                "value: .* | value: nearest | .value | is not one of registered_address",
                "value: .* | value: [either] | .value | must be a single value, not a list",
                "reference: .* | | .reference | is missing",
                "reference: .* | reference: Code | .reference | must be keys with values",
                "reference: .* | 'reference: {title: X, page: 3, year: 2020}' | .reference.page | is not a known key",
                "reference: .* | 'reference: {title: X}' | .reference.year | is missing",
                "basis: invented | basis: rumor | .basis | is not one of read, memory",
                "basis: invented | basis: ruled | .basis | the office's own act",
                "basis: invented | basis: unknown | .basis | needs a basis of unknown",
                "value: .* | value: unknown | .basis | needs a basis of unknown"
            })
    void names_file_line_and_key_of_a_wrong_value(String pattern, String changed, String key, String reason) {
        PackText pack = PackText.of("example").inRule(ITEM, pattern, changed == null ? "" : changed);
        int line = key.equals(".basis")
                ? pack.line(ITEM, "basis:")
                : reason.equals("is missing") && !key.contains("year")
                        ? pack.line(ITEM, "- ")
                        : pack.line(ITEM, changed == null ? "- " : changed);
        // Where the first key of an item is taken away, the item begins with the next one.
        int shift = pattern.startsWith("from") && changed == null ? 1 : 0;
        fails(pack, line + shift, ITEM + "[1]" + key, reason);
    }

    @Test
    void refuses_a_rule_that_is_not_in_the_vocabulary() {
        PackText pack = PackText.of("example").replace("\n  moves.within_county:", "\n  moves.in_county:");
        fails(pack, pack.line("moves.in_county", "- from"), "rules.moves.in_county", "is not a known rule");
    }

    @Test
    void refuses_dates_that_do_not_ascend() {
        String again = "value: by_move_date\n      reference: {title: Code, year: 2020}\n      basis: invented\n"
                + "      checked: 2026-11-25\n    - from: 2020-01-01\n      value: either";
        PackText pack = PackText.of("example").inRule(ITEM, "value: by_move_date", again);
        fails(pack, pack.line(ITEM, "value: either") - 1, ITEM + "[2].from", "dates must be in ascending order");
    }

    @Test
    void takes_invented_law_only_in_a_pack_that_calls_itself_illustrative() {
        PackText pack = PackText.of("example").replace("illustrative: true\n", "");
        fails(pack, pack.line("registration.needed", "basis"), "registration.needed[1].basis", "marked illustrative");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "consequence.wrong_style | in_part | in_part needs a policy",
                "consequence.wrong_style | '{does: reject, policy: shared_contests}' | only with in_part",
                "consequence.wrong_style | '{does: none, cure: signature}' | a cure can be used only with reject or in_part",
                "consequence.wrong_style | keep | is not one of none, in_part",
                "registration.needed | perhaps | is not yes or no",
                "signature.accepted_by | two | is not a whole number",
                "office.closes | 5 pm | is not a time of day",
                "office.holidays | christmas | must be a list",
                "decision.by | soon | must be a deadline such as",
                "decision.by | '{days: 3, time: \"17:00\", if_closed: same_day}' | exactly one of before, after and on",
                "decision.by | '{days: 3, after: election_day, before: election_day, time: \"17:00\", if_closed: same_day}' | exactly one of before, after and on",
                "decision.by | '{after: election_day, time: \"17:00\", if_closed: same_day}' | exactly one of days, business_days and weekday",
                "decision.by | '{days: 3, weekday: friday, after: election_day, time: \"17:00\", if_closed: same_day}' | exactly one of days"
            })
    void refuses_a_value_of_the_wrong_kind(String rule, String value, String reason) {
        PackText pack = PackText.of("example").value(rule, value.replace("$", "\\$"));
        fails(pack, pack.line(rule, "value:"), rule + "[1].value", reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'{days: 3, after: easter, time: \"17:00\", if_closed: same_day}' | .after | is not one of election_day",
                "'{days: 3, after: election_day, time: noon, if_closed: same_day}' | .time | is not a time",
                "'{days: 3, after: election_day, time: \"17:00\"}' | .if_closed | is missing",
                "'{days: -3, after: election_day, time: \"17:00\", if_closed: same_day}' | .days | is not a whole number",
                "'{weekday: fryday, after: election_day, time: \"17:00\", if_closed: same_day}' | .weekday | is not a weekday",
                "'{days: 3, on: election_day, time: \"17:00\", if_closed: same_day}' | .days | cannot also have a distance",
                "'{days: 3, nth: 2, after: election_day, time: \"17:00\", if_closed: same_day}' | .nth | only with weekday",
                "'{days: 3, after: election_day, hour: 5, time: \"17:00\", if_closed: same_day}' | .hour | is not a known key"
            })
    void refuses_a_deadline_by_its_wrong_part(String value, String key, String reason) {
        PackText pack = PackText.of("example").value("decision.by", value);
        fails(pack, pack.line("decision.by", "value:"), "decision.by[1].value" + key, reason);
    }

    @Test
    void refuses_the_noughth_weekday() {
        PackText pack = PackText.of("example")
                .value(
                        "decision.by",
                        "{weekday: friday, nth: 0, after: election_day, time: \"17:00\", if_closed: same_day}");
        fails(pack, pack.line("decision.by", "value:"), "decision.by[1].value", "nth starts at 1");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'{on: election_day, time: end_of_day, if_closed: same_day}' | on election day, end of day",
                "'{weekday: friday, after: election_day, time: \"16:00\", if_closed: same_day}' | Friday after election day, 4:00 pm",
                "'{weekday: monday, nth: 5, before: election_day, time: end_of_day, if_closed: next_open_day}' | 5th Monday before election day, end of day; if closed, the next open day",
                "'{business_days: 2, before: certification, time: close_of_business, if_closed: previous_open_day}' | 2 business days before certification, close of business; if closed, the previous open day",
                "none | none"
            })
    void reads_every_kind_of_deadline(String value, String words) {
        RulePack pack = RulePacks.load(
                PackText.of("example").value("gate.review", value).in(folder).toString());
        assertThat(pack.inForce(Rules.GATE_REVIEW, LocalDate.of(2026, 11, 3))
                        .orElseThrow()
                        .value()
                        .spelled())
                .isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"certification.by, certification", "certification.by, mail_receipt", "mail.receipt, mail_receipt"})
    void refuses_a_deadline_that_is_counted_from_itself(String rule, String anchor) {
        PackText pack = PackText.of("example")
                .value(rule, "{days: 3, after: " + anchor + ", time: \"17:00\", if_closed: same_day}");
        fails(pack, pack.line(rule, "value:"), rule + "[1].value", "cannot be counted from " + anchor);
    }

    @Test
    void refuses_a_pack_to_lie_over_that_there_is_not_and_a_name_that_is_neither_pack_nor_file() {
        fails(
                PackText.of("example").replace("over: us", "over: mars"),
                5,
                "over",
                "is not a rule pack that can be a base");
        refused(() -> RulePacks.load("mars"), "mars", 0, "", "is not a bundled rule pack");
    }

    @Test
    void refuses_wrong_words_for_a_reason() {
        PackText unknown = PackText.of("us").replace("\n  spoiled:\n", "\n  ruined:\n");
        fails(unknown, unknown.line("ruined", "survey"), "reasons.ruined", "is not a known reason");
        PackText survey = PackText.of("us").replace("survey: wrong_precinct", "survey: elsewhere");
        fails(
                survey,
                survey.line("wrong_style", "survey"),
                "reasons.wrong_style.survey",
                "is not one of not_registered");
    }

    @Test
    void refuses_a_ruling_on_no_rule_or_with_a_wrong_value() {
        refused(() -> rule("moves.anywhere", ""), "election.yaml", 0, "rulings", "is not a known rule");
        refused(
                () -> rule("moves.within_county", "nearest"),
                "ruling on moves.within_county",
                1,
                "value",
                "is not one of");
    }

    private static final String ORDER = """
            orders:
              - court: Circuit Court
                on: 2026-10-12
                from: 2026-11-03
                to: 2026-11-03
                standing: in_force
                rule: registration.online
                value: {days: 14, before: election_day, time: end_of_day, if_closed: same_day}
                reference: {title: "No. 1-26", year: 2026}
                basis: invented
                checked: 2026-11-25
            """;

    @Test
    void reads_a_court_order_as_an_act_of_its_own() {
        RulePack pack = RulePacks.load(PackText.of("example")
                .replace("\nrules:\n", "\n" + ORDER + "rules:\n")
                .in(folder)
                .toString());
        assertThat(pack.orders()).singleElement().satisfies(order -> {
            assertThat(order.court()).isEqualTo("Circuit Court");
            assertThat(order.value().value().spelled()).startsWith("14 days before election day");
        });
        assertThat(pack.values()).containsKey(Rule.find("registration.online").orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rule: registration.online | rule: registration.telegram | orders[1].rule | not a known rule",
                "to: 2026-11-03 | to: 2026-11-02 | orders[1].to | before its first",
                "standing: in_force | standing: doubtful | orders[1].standing | is not one of",
                "court: Circuit Court | judge: X | orders[1].judge | is not a known key here"
            })
    void refuses_a_court_order_by_its_wrong_part(String was, String changed, String key, String reason) {
        PackText pack = PackText.of("example").replace("\nrules:\n", "\n" + ORDER.replace(was, changed) + "rules:\n");
        assertThatThrownBy(() -> RulePacks.load(pack.in(folder).toString()))
                .hasMessageContaining(key)
                .hasMessageContaining(reason);
    }

    private static void rule(String rule, String value) {
        RulePacks.rulings(List.of(new CountyRuling(rule, value, "A. Reyes", LocalDate.of(2026, 10, 1), "letter")));
    }

    private void fails(PackText pack, int line, String key, String reason) {
        Path file = pack.in(folder);
        String full =
                key.startsWith("rules.") || key.startsWith("reasons.") || key.equals("over") ? key : "rules." + key;
        refused(() -> RulePacks.load(file.toString()), "pack.yaml", line, full, reason);
    }
}
