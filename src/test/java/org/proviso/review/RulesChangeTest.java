package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResults;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.WhatIf;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.Rules;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.RulesService;
import org.proviso.election.rules.PutRulesInForce;
import org.proviso.election.rules.RuleChangeService;
import org.proviso.election.rules.RulingService;
import org.proviso.election.rules.SignRuling;
import org.proviso.intake.LoadedOffice;
import org.proviso.journey.Primary;
import org.proviso.review.assess.AssessmentRow;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.assess.RulingTask;
import org.proviso.review.assess.RulingWorkService;
import org.proviso.review.assess.WhatIfService;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.news.CaseEventListenerTest;

/** County rulings and packs of the office's own: what they change, what they leave, and what is refused. */
class RulesChangeTest {

    private static final LocalDate SIGNED = LocalDate.of(2026, 7, 1);
    private static final String NOBODY_SHOWS_ID = "identification.required_of";

    private static SignRuling ruling(String rule, String value) {
        return new SignRuling(new ElectionId(Primary.ID), rule, value, "County Clerk", SIGNED, "counsel's letter");
    }

    private static String pack(String rules) {
        return "pack: ours\nname: Our pack\nover: example\nillustrative: true\ncaution: Ours.\n" + rules;
    }

    private static String value(String rule, String value, String basis) {
        return "rules:\n  " + rule + ":\n    - from: 2020-01-01\n      value: " + value
                + "\n      reference: {title: Ours, year: 2026}\n      basis: " + basis
                + "\n      checked: 2026-11-27\n";
    }

    private static AssessmentRow waitsForId(Primary primary, TestOffice services) {
        return services.the(AssessmentService.class)
                .latest(primary.envelope("no_id"))
                .orElseThrow();
    }

    @OnADatabase
    void a_ruling_holds_at_once_and_open_cases_are_assessed_anew(TestOffice services) {
        Primary primary = Primary.loaded(services);
        AssessmentRow before = waitsForId(primary, services);
        RulingService rulings = services.the(RulingService.class);

        assertThat(inForce(rulings, ruling(NOBODY_SHOWS_ID, "nobody"))).isOne();

        LedgerEntry entry = LoadedOffice.lastEntry(services);
        assertThat(entry.act()).isEqualTo("ruling_signed");
        assertThat(entry.payload()).containsEntry("value", "nobody").containsEntry("before", "everyone");
        assertThat(services.the(RulesService.class)
                        .book(new ElectionId(Primary.ID))
                        .pack()
                        .of(Rules.ID_REQUIRED_OF)
                        .signedBy())
                .isEqualTo("County Clerk");
        assertThat(services.the(AssessmentService.class)
                        .latest(before.key())
                        .orElseThrow()
                        .outlook())
                .isEqualTo(Recommendation.COUNT)
                .isNotEqualTo(before.outlook());
        assertThat(inForce(rulings, ruling(NOBODY_SHOWS_ID, "first_time_mail"))).isEqualTo(2);
        assertThat(as("carl", () -> rulings.acts(new ElectionId(Primary.ID))))
                .extracting(act -> act.recorded().ruling().value())
                .containsExactly("nobody", "first_time_mail");
    }

    @OnADatabase
    void a_ruling_on_no_rule_or_with_no_value_changes_nothing(TestOffice services) {
        Primary.loaded(services);
        RulingService rulings = services.the(RulingService.class);
        refused(
                rulings,
                ruling("identification.asked_of", "nobody"),
                Why.RULES_NOT_READABLE,
                "rule",
                "not a known rule");
        refused(rulings, ruling(NOBODY_SHOWS_ID, "friends"), Why.RULES_NOT_READABLE, "value", "is not one of nobody");
        refused(rulings, ruling("mail.rejected", ""), Why.NOTHING_NEW, "value", "nothing to confirm");
        assertThatThrownBy(() -> as("ada", () -> rulings.record(ruling(NOBODY_SHOWS_ID, "nobody"))))
                .isInstanceOf(NotPermittedException.class);
        assertThat(as("carl", () -> rulings.acts(new ElectionId(Primary.ID)))).isEmpty();
    }

    @OnBothDatabases
    void a_ruling_is_recorded_by_one_supervisor_and_changes_nothing_before_another_puts_it_in_force(
            TestOffice services) {
        Primary primary = Primary.loaded(services);
        ElectionId id = new ElectionId(Primary.ID);
        AssessmentRow before = waitsForId(primary, services);
        RulingService rulings = services.the(RulingService.class);
        int slip = accepted(as("carl", () -> rulings.record(ruling(NOBODY_SHOWS_ID, "nobody"))));
        assertThat(waitsForId(primary, services).outlook()).isEqualTo(before.outlook());
        assertThatThrownBy(() -> as("carl", () -> rulings.putInForce(id, slip)))
                .as("nobody puts their own in force")
                .isInstanceOf(NotPermittedException.class);
        accepted(as("carl", () -> rulings.takeBack(id, slip)));
        assertThat(ActResults.why(as("dora", () -> rulings.putInForce(id, slip))))
                .isEqualTo(Why.NOTHING_NEW);
        int number = inForce(rulings, ruling(NOBODY_SHOWS_ID, "nobody"));
        assertThat(waitsForId(primary, services).outlook()).isEqualTo(Recommendation.COUNT);
        assertThat(ActResults.why(as("dora", () -> rulings.putInForce(id, number))))
                .as("twice")
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(ActResults.why(as("dora", () -> rulings.takeBack(id, number))))
                .as("it is in force: another ruling replaces it")
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(as("carl", () -> rulings.acts(id)))
                .extracting(
                        RulingService.NamedRuling::recordedBy,
                        RulingService.NamedRuling::inForceBy,
                        RulingService.NamedRuling::byYou)
                .containsExactly(tuple("carl", null, true), tuple("carl", "dora", true));
    }

    @OnADatabase
    void the_work_list_names_what_to_ask_and_which_envelopes_wait(TestOffice services) {
        Primary.loaded(services);
        services.jdbc()
                .sql("update election set rule_pack = 'us' where election_id = ?")
                .param(Primary.ID)
                .update();
        RulingWorkService work = services.the(RulingWorkService.class);

        List<RulingTask> tasks = as("carl", () -> work.tasks(new ElectionId(Primary.ID)));

        RulingTask compared = task(tasks, "signature.compared");
        assertThat(compared.question())
                .startsWith("For the election of August 4, 2026, what is the law on whether the");
        assertThat(compared.waiting()).isPositive();
        assertThat(compared.first()).isSorted().hasSize(Math.min(8, compared.waiting()));
        assertThat(task(tasks, "consequence.spoiled").question())
                .contains("please confirm")
                .contains("from memory");
        assertThat(tasks).extracting(rulingTask -> -rulingTask.waiting()).isSorted();
        inForce(services.the(RulingService.class), ruling("signature.compared", "no"));
        assertThat(as("carl", () -> work.tasks(new ElectionId(Primary.ID))))
                .extracting(rulingTask -> rulingTask.given().rule().key())
                .doesNotContain("signature.compared");
        keptAsFoundAnew(services, work);
    }

    /** Cases were assessed under these rules, so what they wait for is kept; it is the same when it is found anew. */
    private static void keptAsFoundAnew(TestOffice services, RulingWorkService work) {
        List<RulingTask> kept = as("carl", () -> work.tasks(new ElectionId(Primary.ID)));
        assertThat(services.jdbc()
                        .sql("select count(*) from envelope_case where waiting_rules <> '' and waiting_pack <> ''")
                        .query(Integer.class)
                        .single())
                .isPositive();
        assertThat(kept.get(0).waiting()).isGreaterThan(8);
        services.jdbc()
                .sql("update envelope_case set waiting_pack = '', waiting_rules = '' where envelope_no like '%0'")
                .update();
        assertThat(as("carl", () -> work.tasks(new ElectionId(Primary.ID)))).isEqualTo(kept);
        services.jdbc()
                .sql("update envelope_case set waiting_pack = '', waiting_rules = ''")
                .update();
        assertThat(as("carl", () -> work.tasks(new ElectionId(Primary.ID)))).isEqualTo(kept);
    }

    @OnADatabase
    void what_if_says_which_cases_would_change_and_writes_nothing(TestOffice services) {
        Primary primary = Primary.loaded(services);
        AssessmentRow before = waitsForId(primary, services);
        WhatIfService whatIf = services.the(WhatIfService.class);

        WhatIfService.WhatIfResult compared = accepted(
                as("carl", () -> whatIf.compare(new ElectionId(Primary.ID), "", Map.of(NOBODY_SHOWS_ID, "nobody"))));

        assertThat(compared.differences())
                .filteredOn(difference ->
                        difference.envelopeNo().equals(before.key().envelopeNo()))
                .singleElement()
                .satisfies(difference -> {
                    assertThat(difference.outlookBefore()).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
                    assertThat(difference.outlookAfter()).isEqualTo(Recommendation.COUNT);
                    assertThat(String.join(" ", difference.because()))
                            .contains("Was identification shown?", NOBODY_SHOWS_ID + " (supposed value)");
                });
        assertThat(compared.differences()).extracting(WhatIf::envelopeNo).hasSizeLessThan(compared.cases());
        assertThat(services.the(AssessmentService.class).latest(before.key())).contains(before);
        assertThat(ActResults.refused(
                        as("carl", () -> whatIf.compare(new ElectionId(Primary.ID), "atlantis", Map.of()))))
                .returns(Why.NO_SUCH_RULE_PACK, Refusal::why)
                .returns("pack", Refusal::field);
        assertThat(ActResults.refused(as(
                        "carl",
                        () -> whatIf.compare(new ElectionId(Primary.ID), "", Map.of(NOBODY_SHOWS_ID, "friends")))))
                .returns(Why.RULES_NOT_READABLE, Refusal::why)
                .returns("changed", Refusal::field);
    }

    @OnADatabase
    void a_proved_pack_takes_the_place_and_decided_cases_keep_theirs_marked_stale(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("mail_surrendered");
        primary.reviewing(key).work();
        CaseEventListenerTest.decide(primary, key, DecisionOutcome.COUNT, List.of(), "");
        AssessmentRow before = waitsForId(primary, services);
        String hash = services.the(RulesService.class)
                .book(new ElectionId(Primary.ID))
                .pack()
                .hash();
        RuleChangeService changes = services.the(RuleChangeService.class);
        PutRulesInForce ours = new PutRulesInForce(
                new ElectionId(Primary.ID), pack(value(NOBODY_SHOWS_ID, "nobody", "invented")), "", "");

        assertThat(accepted(as("carl", () -> changes.putInForce(ours))).changeNo())
                .isOne();

        assertThat(LoadedOffice.lastEntry(services).payload())
                .containsEntry("accepted_because", "proved")
                .containsEntry("hash_before", hash);
        assertThat(services.the(AssessmentService.class)
                        .latest(before.key())
                        .orElseThrow()
                        .outlook())
                .isEqualTo(Recommendation.COUNT);
        assertThat(services.the(AssessmentService.class).stale(new ElectionId(Primary.ID)))
                .singleElement()
                .satisfies(stale -> {
                    assertThat(stale.key()).isEqualTo(key);
                    assertThat(stale.packHash()).isEqualTo(hash);
                });
        assertThat(primary.now(key).state()).isEqualTo(CaseState.DECIDED);
        assertThat(settledUnderOtherRules(services, key)).isTrue();
        assertThat(settledUnderOtherRules(services, before.key())).isFalse();
        assertThat(ActResults.refused(as("carl", () -> changes.putInForce(ours)))
                        .why())
                .isEqualTo(Why.NOTHING_NEW);
    }

    /** What the page of the case says of it. */
    private static boolean settledUnderOtherRules(TestOffice services, EnvelopeKey key) {
        return as("ada", () -> services.the(CaseFileService.class).open(key).orElseThrow())
                .work()
                .rulesChangedSince();
    }

    @OnADatabase
    void a_pack_that_breaks_a_promise_is_refused_unless_counsel_overrides_it_on_record(TestOffice services) {
        Primary.loaded(services);
        RuleChangeService changes = services.the(RuleChangeService.class);
        String broken = pack(value("consequence.voted_in_person", "none", "memory"));

        Refusal refusal = ActResults.refused(as(
                "carl", () -> changes.putInForce(new PutRulesInForce(new ElectionId(Primary.ID), broken, "", "why"))));
        assertThat(refusal.why()).isEqualTo(Why.RULES_BREAK_A_PROMISE);
        assertThat(refusal.words()).contains("A ballot never counts").contains("check_in is voted");
        assertThat(as("carl", () -> changes.changes(new ElectionId(Primary.ID))))
                .isEmpty();

        accepted(as(
                "carl",
                () -> changes.putInForce(
                        new PutRulesInForce(new ElectionId(Primary.ID), broken, "County Counsel", "Order No. 7"))));
        assertThat(as("carl", () -> changes.changes(new ElectionId(Primary.ID))))
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.isOverride()).isTrue();
                    assertThat(change.counsel()).isEqualTo("County Counsel");
                    assertThat(change.putBy()).isEqualTo("carl");
                    assertThat(change.counterexample()).contains("check_in is voted");
                });
        assertThat(LoadedOffice.lastEntry(services)
                        .payload()
                        .get("counterexample")
                        .toString())
                .contains("check_in is voted");
        assertThat(services.the(RulesService.class)
                        .book(new ElectionId(Primary.ID))
                        .pack()
                        .of(org.proviso.core.rules.Rule.find("consequence.voted_in_person")
                                .orElseThrow())
                        .basis())
                .isEqualTo(Basis.MEMORY);
        Refusal unread = ActResults.refused(
                as("carl", () -> changes.tryOut(new ElectionId(Primary.ID), pack("rules: {moves.nowhere: []}\n"))));
        assertThat(unread).returns(Why.RULES_NOT_READABLE, Refusal::why).returns("content", Refusal::field);
        assertThat(unread.words()).contains("moves.nowhere");
    }

    /** Recorded by one supervisor, put in force by another; the number of the ruling. */
    private static int inForce(RulingService rulings, SignRuling ruling) {
        int number = accepted(as("carl", () -> rulings.record(ruling)));
        return accepted(as("dora", () -> rulings.putInForce(ruling.electionId(), number)));
    }

    private static RulingTask task(List<RulingTask> tasks, String rule) {
        return tasks.stream()
                .filter(rulingTask -> rulingTask.given().rule().key().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static void refused(RulingService rulings, SignRuling ruling, Why why, String field, String words) {
        Refusal refusal = ActResults.refused(as("carl", () -> rulings.record(ruling)));
        assertThat(refusal).returns(why, Refusal::why).returns(field, Refusal::field);
        assertThat(refusal.words()).contains(words);
    }
}
