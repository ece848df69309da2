package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.choose;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.type;
import static org.proviso.journey.PageDriver.wrong;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.access.OfficeUser;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.access.UserService;
import org.proviso.core.CountyRuling;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.RecordCourtOrder;
import org.proviso.election.rules.RulingService;
import org.proviso.review.CaseState;
import org.proviso.ui.MessageLine;
import org.springframework.beans.factory.annotation.Autowired;

/** What an administrator and a supervisor enter: AccountSheet, PersonSheet, RolesSheet, RulingForm, OneRuleForm, CourtOrderForm, CourtOrderSheet. */
@OnPages
class SetupFormsTest {

    private static final String NOT_SAVED = "Not saved. Check the highlighted fields.";

    @Autowired
    private PageDriver pages;

    @BeforeAll
    static void hire() {
        Staff.hire(PagesOffice.primary().office().services(), "zoe", Role.ADMINISTRATOR);
        Staff.hire(PagesOffice.primary().office().services(), "kim", Role.INTAKE);
    }

    private static Optional<OfficeUser> user(String userName) {
        return as("zoe", () -> PagesOffice.the(UserService.class).all()).stream()
                .filter(one -> one.userName().equals(new UserName(userName)))
                .findFirst();
    }

    @Test
    void an_account_is_created_with_a_user_name_and_a_role() {
        pages.on("set-up/users", "zoe", () -> {
            press("Create account");
            type("full-name", "Lou Mercer");
            type("user-name", "Lou Mercer");
            press("Create account");
            assertThat(wrong("full-name")).isEmpty();
            assertThat(wrong("user-name"))
                    .isEqualTo("Use lowercase letters, digits, dots and hyphens, starting with a letter.");
            type("user-name", "l.mercer");
            press("Create account");
            assertThat(marked("Roles")).isEqualTo("Select at least one role.");
            fill("Roles", Set.of(Role.ADMINISTRATOR, Role.REVIEWER));
            press("Create account");
            assertThat(said()).contains("An administrator has no part in any case.");
            assertThat(user("l.mercer")).isEmpty();
            fill("Roles", Set.of(Role.REVIEWER));
            press("Create account");
            assertThat(said()).contains("It is shown only once and is not stored.");
        });
        assertThat(user("l.mercer").orElseThrow().fullName()).isEqualTo("Lou Mercer");
        assertThat(user("l.mercer").orElseThrow().roles()).containsExactly(Role.REVIEWER);
    }

    @Test
    void a_person_gets_another_name_and_party() {
        Staff.hire(PagesOffice.primary().office().services(), "lee", Role.INTAKE);
        pages.on("set-up/users", "zoe", () -> {
            press("Change name or party: lee");
            type("new-name", " ");
            press("Save name and party");
            assertThat(wrong("new-name")).isEqualTo("Required.");
            type("new-name", "Lee Marsh");
            type("new-party", "Plains");
            press("Save name and party");
            assertThat(MessageLine.words()).isEqualTo("Name and party of Lee Marsh saved.");
            assertThat(said()).contains("Lee Marsh");
        });
        assertThat(user("lee").orElseThrow().fullName()).isEqualTo("Lee Marsh");
        assertThat(user("lee").orElseThrow().party()).isEqualTo("Plains");
    }

    @Test
    void nobody_is_left_without_a_role() {
        pages.on("set-up/users", "zoe", () -> {
            press("Change roles: kim");
            fill("Roles", Set.of());
            press("Save roles");
            assertThat(marked("Roles")).isEqualTo("Select at least one role, or close the account.");
            assertThat(user("kim").orElseThrow().roles()).containsExactly(Role.INTAKE);
            fill("Roles", Set.of(Role.INTAKE, Role.OBSERVER));
            press("Save roles");
            assertThat(MessageLine.words()).isEqualTo("Roles changed for kim.");
        });
        assertThat(user("kim").orElseThrow().roles()).containsExactlyInAnyOrder(Role.INTAKE, Role.OBSERVER);
    }

    @Test
    void a_ruling_is_recorded_as_it_was_signed_and_put_in_force_by_another_supervisor() {
        pages.on("set-up/rulings", "carl", () -> {
            press("Record ruling");
            assertThat(wrong("value")).isEqualTo("Choose a rule.");
            choose("rule", "cure.identification");
            type("on", "Thursday");
            press("Record ruling");
            assertThat(wrong("signed-by")).isEqualTo("Required.");
            assertThat(wrong("on")).startsWith("Enter the month, day and year");
            assertThat(MessageLine.words()).isEqualTo(NOT_SAVED);
            type("signed-by", "County Clerk");
            type("on", "8/6/2026");
            type("ground", "counsel's letter");
            type("value", "whatever");
            press("Record ruling");
            assertThat(wrong("value")).isNotEmpty();
            assertThat(rulings()).isEmpty();
            choose("rule", "signature.no_exemplar");
            choose("value", "person_decides");
            press("Record ruling");
            assertThat(MessageLine.words()).contains("Another supervisor has to put it in force.");
            assertThat(said()).doesNotContain("Put ruling in force");
            assertThat(said()).contains("(signature.no_exemplar)person decidesCounty Clerk");
        });
        pages.on("", "dora", () -> assertThat(said()).contains("County rulings to put in force"));
        pages.on("set-up/rulings", "dora", () -> {
            press("Put ruling in force");
            assertThat(MessageLine.words()).contains("is in force.");
            assertThat(said()).doesNotContain("Take back ruling");
        });
        assertThat(rulings())
                .containsExactly(new CountyRuling(
                        "signature.no_exemplar",
                        "person_decides",
                        "County Clerk",
                        LocalDate.of(2026, 8, 6),
                        "counsel's letter"));
    }

    private static List<CountyRuling> rulings() {
        return as("carl", () -> PagesOffice.the(RulingService.class).acts(PagesOffice.ELECTION)).stream()
                .map(named -> named.recorded().ruling())
                .filter(ruling -> ruling.rule().equals("signature.no_exemplar"))
                .toList();
    }

    /** The ElectionFactsForm: what is typed stands for election.yaml among the files. */
    @Test
    void the_facts_of_an_election_are_typed_and_what_is_missing_is_named() {
        pages.on("set-up", "carl", () -> {
            press("Load election");
            assertThat(MessageLine.words()).startsWith("Not loaded. Still missing: election.yaml, contests.csv");
            type("election-name", "Special");
            type("election-date", "soon");
            type("quorum", "4");
            type("members", "3");
            type("zone", "Nowhere/Here");
            press("Use these facts");
            assertThat(MessageLine.words()).isEqualTo("Not used. Check the highlighted fields.");
            assertThat(wrong("county")).isEqualTo("Required.");
            assertThat(wrong("election-date")).startsWith("Enter the month, day and year");
            assertThat(wrong("quorum")).isEqualTo("A number from 1 to the number of members.");
            assertThat(wrong("zone")).startsWith("Not a time zone.");
            type("election-date", "12/1/2026");
            type("quorum", "2");
            type("zone", "America/Chicago");
            Map.of(
                            "county", "Osprey County",
                            "polls-close", "8:00 pm",
                            "office-name", "Osprey Office",
                            "office-address", "1 Pier Rd, Osprey 49000",
                            "office-phone", "555-0142",
                            "office-email", "office@example.org",
                            "office-hours", "8 to 5")
                    .forEach(PageDriver::type);
            press("Use these facts");
            assertThat(said()).contains("Files chosen: election.yaml.");
            press("Load election");
            assertThat(MessageLine.words())
                    .isEqualTo("Not loaded. Still missing: contests.csv, ballot-styles.csv, precincts.csv, streets.csv,"
                            + " roll.csv, mail-ballots.csv, check-ins.csv.");
        });
    }

    @Test
    void a_court_order_names_its_envelopes() {
        pages.on("set-up/orders", "carl", () -> {
            choose("kind", CourtOrder.Kind.HOLD.code());
            type("date", "soon");
            press("Record order");
            assertThat(wrong("court")).isEqualTo("Required.");
            assertThat(wrong("scope")).isEqualTo("Required.");
            assertThat(wrong("date")).startsWith("Enter the month, day and year");
            assertThat(MessageLine.words()).isEqualTo(NOT_SAVED);
            choose("kind", CourtOrder.Kind.COUNT.code());
            type("court", "Osprey District Court");
            type("case-no", "26-1187-CV");
            type("judge", "Judge Roe");
            type("scope", "The envelope counts.");
            type("date", "8/5/2026");
            press("Record order");
            assertThat(wrong("envelopes")).isEqualTo("Required for an order to count or reject.");
            type("envelopes", "P-0000");
            press("Record order");
            assertThat(wrong("envelopes")).contains("P-0000");
            assertThat(orders("Osprey District Court")).isEmpty();
            type("envelopes", "P-1056");
            press("Record order");
            press("Record order");
            assertThat(wrong("court")).as("recorded once").isEqualTo("Required.");
            assertThat(said()).contains("No. 26-1187-CV, Judge Roe", "Add scan");
        });
        assertThat(orders("Osprey District Court"))
                .containsExactly(new CourtOrder(
                        CourtOrder.Kind.COUNT,
                        "Osprey District Court",
                        LocalDate.of(2026, 8, 5),
                        "The envelope counts.",
                        CourtOrder.Status.IN_FORCE,
                        null,
                        Set.of(PagesOffice.key("P-1056").envelopeNo())));
    }

    @Test
    void an_order_to_extend_the_hours_says_until_when_and_no_number_is_too_long() {
        pages.on("set-up/orders", "carl", () -> {
            choose("kind", CourtOrder.Kind.EXTEND.code());
            type("court", "Birch Hall Circuit Court");
            type("scope", "The polls stay open.");
            press("Record order");
            assertThat(wrong("until-day")).startsWith("Required. Enter both date and time");
            type("until-day", "8/4/2026");
            type("until-time", "9:00 pm");
            type("envelopes", "P-1001, " + "9".repeat(61));
            press("Record order");
            assertThat(wrong("envelopes")).startsWith("No envelope has a number as long as 9999");
            assertThat(MessageLine.words()).isEqualTo(NOT_SAVED);
        });
        assertThat(orders("Birch Hall Circuit Court")).isEmpty();
    }

    private static List<CourtOrder> orders(String court) {
        return as("carl", () -> PagesOffice.the(CourtOrderRecordService.class).all(PagesOffice.ELECTION)).stream()
                .map(RecordedCourtOrder::order)
                .filter(order -> order.court().equals(court))
                .toList();
    }

    @Test
    void a_case_is_settled_as_an_order_in_force_says() {
        EnvelopeKey key = PagesOffice.linked("P-1060");
        RecordedCourtOrder ordered = ordered(key);
        pages.on(
                "review/case/P-1060",
                "carl",
                () -> assertThat(said())
                        .contains("You recorded the court's order. Another supervisor enters it here."));
        pages.on("review/case/P-1060", "dora", () -> {
            press("Enter court order");
            assertThat(said()).contains("Birch Hall District Court, order of 08/05/2026: count this envelope.");
            RecordedCourtOrder aside = standing(ordered, CourtOrder.Status.SET_ASIDE);
            press("Enter court order");
            assertThat(said()).contains("No order in force says how to settle this envelope.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.IN_REVIEW);
            standing(aside, CourtOrder.Status.IN_FORCE);
            press("Enter court order");
            assertThat(MessageLine.words()).isEqualTo("Envelope P-1060 decided by court order: count.");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.DECIDED);
        assertThat(PagesOffice.file(key).work().decided().orElseThrow().as()).isEqualTo(DecisionOutcome.COUNT);
    }

    private static RecordedCourtOrder ordered(EnvelopeKey key) {
        return PagesOffice.done(
                "carl",
                () -> PagesOffice.the(CourtOrderRecordService.class)
                        .record(new RecordCourtOrder(
                                PagesOffice.ELECTION,
                                CourtOrder.Kind.COUNT,
                                "Birch Hall District Court",
                                LocalDate.of(2026, 8, 5),
                                "It was cast in time.",
                                CourtOrder.Status.IN_FORCE,
                                null,
                                Set.of(key.envelopeNo()))));
    }

    private static RecordedCourtOrder standing(RecordedCourtOrder order, CourtOrder.Status standing) {
        return PagesOffice.done(
                "carl",
                () -> PagesOffice.the(CourtOrderRecordService.class)
                        .change(PagesOffice.ELECTION, order.orderNo(), order.version(), standing));
    }

    @Test
    void the_rules_of_vote_and_quorum_are_shown_with_their_default() {
        pages.on(
                "set-up/rules",
                "carl",
                () -> assertThat(said())
                        .contains(
                                "the vote needed to countdecider.vote_to_counta majority of the votes castcommon practiceby default; a county"
                                        + " ruling can change it")
                        .contains(
                                "whether a member who is present and recused counts toward the quorumdecider.quorum_counts_recusednocommon practice"));
    }

    @Test
    void other_rules_are_compared_with_one_rule_and_its_value_chosen() {
        pages.on("set-up/what-if", "carl", () -> {
            press("Compare rules");
            assertThat(MessageLine.words()).isEqualTo("Choose another rule pack, or a rule to change.");
            choose("rule", "identification.required_of");
            press("Compare rules");
            assertThat(wrong("value")).isEqualTo("Choose both a rule and its value, or neither.");
            choose("value", "nobody");
            press("Compare rules");
            assertThat(said()).contains("identification.required_of (supposed value)");
            choose("rule", "cure.identification");
            type("value", "whenever");
            press("Compare rules");
            assertThat(wrong("value")).isNotEmpty();
        });
    }

    @Test
    void one_rule_is_changed_without_writing_a_file_and_proved_first() {
        pages.on("set-up/rules/change", "carl", () -> {
            press("Prove changed rule");
            assertThat(MessageLine.words()).isEqualTo("Choose a rule and its value.");
            choose("rule", "mail.returned");
            choose("value", "stands_in_the_way");
            press("Prove changed rule");
            assertThat(wrong("law-title")).startsWith("Required.");
            assertThat(wrong("law-year")).startsWith("Required.");
            type("law-title", "Example \"Election\" Code: 3");
            type("law-year", "2026");
            press("Prove changed rule");
            assertThat(MessageLine.words()).startsWith("Proved.");
            assertThat(said()).contains("(mail.returned), not in force", "Proof passed", "Put rule pack in force");
            choose("rule", "cure.identification");
            type("value", "whenever");
            press("Prove changed rule");
            assertThat(said()).contains("File not read:", "must be a deadline such as");
        });
    }
}
