package org.proviso.notices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.RulesService;
import org.proviso.journey.Primary;

class LetterTest {

    private static final LocalDateTime DECIDING = LocalDateTime.of(2026, 8, 6, 12, 0);
    private static final int LONG_SENTENCE = 25;

    @OnADatabase
    void a_cure_notice_says_what_is_missing_where_and_until_when(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = NoticeOffice.key(new EnvelopeNumber("P-1009"));
        String letter = office.letter(office.ask(key, Ask.IDENTIFICATION));
        Envelope envelope = office.primary().reviewing(key).report().envelope();
        assertThat(letter)
                .contains("Tamarack County Primary, Tuesday, August 4, 2026")
                .contains("Your receipt number: " + envelope.receiptNo())
                .contains("You did not show identification when you voted.")
                .contains("it must reach us by Tuesday, August 11, 2026, at 5:00 pm. A postmark is not enough.")
                .contains("1 Courthouse Sq, Millbrook 49871")
                .contains("555-0100")
                .contains("This is free.")
                .contains("If we do not hear from you in time")
                .contains("Example Election Code (invented) 6.2 (2020)");
    }

    @OnADatabase
    void a_letter_about_an_envelope_without_a_receipt_number_names_none(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = NoticeOffice.key(new EnvelopeNumber("P-1009"));
        services.jdbc()
                .sql("update envelope set receipt_no = '' where envelope_no = 'P-1009'")
                .update();
        assertThat(office.letter(office.ask(key, Ask.IDENTIFICATION)))
                .contains("Tamarack County Primary, Tuesday, August 4, 2026.")
                .doesNotContain("receipt number");
    }

    @OnADatabase
    void the_letter_of_a_rejection_gives_the_reason_in_plain_words_the_law_and_what_next(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("registered_late");
        office.at(DECIDING);
        office.deciding().settled(key);
        assertThat(office.letter(office.outcome(key)))
                .contains("Your ballot was not counted")
                .contains("You registered after the last day to register for this election.")
                .contains("The law: Example Election Code (invented) 2.2 (2020).")
                .contains("call us before the next election. We will check with you that you are registered for it.")
                .as("a form for somebody who did register")
                .doesNotContain("A form comes");
    }

    @OnADatabase
    void a_form_comes_only_with_the_letter_to_a_voter_who_is_not_registered(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("cancelled");
        office.at(DECIDING);
        office.deciding().settled(key);
        Notice notice = office.outcome(key);
        assertThat(office.letter(notice))
                .contains("register now for the next election. A form comes with this letter.");
        assertThat(as("carl", () -> office.service().letter(key, notice.number()))
                        .formComes())
                .isTrue();
        becomes(services, Reason.REGISTRATION_PENDING);
        assertThat(office.letter(notice))
                .contains("call us to ask what your registration still needs for the next election.")
                .doesNotContain("A form comes");
        becomes(services, Reason.NOT_REGISTERED);
        ruled(services, "rejected.registers_the_voter", "yes");
        assertThat(office.letter(notice))
                .contains("your envelope is also your application to register.")
                .doesNotContain("A form comes");
        assertThat(as("carl", () -> office.service().letter(key, notice.number()))
                        .formComes())
                .isFalse();
    }

    private static void becomes(TestOffice services, Reason reason) {
        services.jdbc()
                .sql("update decision set reasons = ?")
                .param(reason.code())
                .update();
    }

    @OnADatabase
    void the_letter_lists_what_the_rules_accept_and_how_it_may_reach_the_office(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice notice = office.ask(NoticeOffice.key(new EnvelopeNumber("P-1009")), Ask.IDENTIFICATION);
        assertThat(office.letter(notice))
                .contains("Bring us identification that the law accepts, or send us a copy.")
                .contains("You may come in person or write to us. Call us to ask how else you may send it.")
                .contains("If you have none, you may sign a statement instead. Ask us for the form.");
        ruled(services, "identification.accepts", "[photo_id, document_with_name_and_address]");
        ruled(services, "identification.declarations", "[religious_objection, indigence]");
        ruled(services, "cure_ways.identification", "[in_person, mail, email, fax]");
        assertThat(office.letter(notice))
                .contains(
                        "Bring us one of these, or send us a copy. We accept a photo ID. We also accept a paper with your name"
                                + " and address on it.")
                .contains("You may sign a statement instead if your religion does not let you have your picture taken."
                        + " You may also sign it if you cannot pay for identification. Ask us for the form.")
                .contains("You may do this in person, by mail, by email or by fax. Our email: ")
                .contains("Call us to ask for the number or the address to send it to.")
                .doesNotContain("write to us", "Call us to ask how else");
        assertThat(sentences(office, notice)).allMatch(words -> words <= LONG_SENTENCE);
        ruled(services, "cure_ways.identification", "[in_person]");
        assertThat(office.letter(notice))
                .contains("You may do this in person.")
                .doesNotContain("send us a copy", "Our email");
    }

    private static void ruled(TestOffice services, String rule, String value) {
        services.jdbc()
                .sql("delete from county_ruling where rule = ?")
                .param(rule)
                .update();
        services.jdbc()
                .sql("insert into county_ruling values (?, ?, ?, 'A. Reyes', ?, 'letter of counsel')")
                .params(Primary.ID, rule, value, NoticeOffice.NOON.toLocalDate())
                .update();
        services.inTransaction(() -> services.the(RulesService.class).keep(new ElectionId(Primary.ID)));
    }

    /** No word of the vocabulary is printed as its code. */
    @Test
    void every_word_that_a_pack_may_say_of_cures_has_its_words() {
        assertThat(AskWords.WAYS.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        Rule.cureWays(Ask.IDENTIFICATION).words());
        assertThat(AskWords.ACCEPTED.keySet()).containsExactlyInAnyOrderElementsOf(InformationRules.ID_ACCEPTS.words());
        assertThat(AskWords.DECLARED.keySet())
                .containsExactlyInAnyOrderElementsOf(InformationRules.ID_DECLARATIONS.words());
    }

    @OnADatabase
    void the_letter_of_a_part_names_the_contests_that_counted_and_those_that_did_not(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("wrong_split");
        office.at(DECIDING);
        office.deciding().settled(key);
        String letter = office.letter(office.outcome(key));
        assertThat(letter).contains("Part of your ballot was counted", "Counted: ", "Not counted: ");
        List<String> counted = titles(letter, "Counted: ");
        List<String> lost = titles(letter, "Not counted: ");
        assertThat(counted).isNotEmpty().doesNotContainAnyElementsOf(lost);
        assertThat(lost).isNotEmpty();
        assertThat(counted.size() + lost.size())
                .isEqualTo(office.primary()
                        .reviewing(key)
                        .report()
                        .settled()
                        .facts()
                        .contests()
                        .cast()
                        .size());
        assertThat(letter).contains("the place to vote is ");
    }

    private static List<String> titles(String letter, String heading) {
        return Arrays.stream(letter.split("\n"))
                .filter(line -> line.startsWith(heading))
                .flatMap(line -> Stream.of(
                        line.substring(heading.length(), line.length() - 1).split("; ")))
                .toList();
    }

    @OnADatabase
    void no_letter_has_what_must_not_be_in_it_and_none_is_hard_to_read(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        office.at(DECIDING);
        for (String scenario : List.of("registered_late", "wrong_split", "cancelled", "mail_accepted")) {
            office.deciding().settled(office.primary().envelope(scenario));
        }
        List<DueNotice> due = as("carl", () -> office.service().due(new ElectionId(Primary.ID)));
        assertThat(due).hasSizeGreaterThan(8);
        for (DueNotice dueNotice : due) {
            String letter = office.letter(dueNotice.notice());
            CaseReport report =
                    office.primary().reviewing(dueNotice.notice().key()).report();
            assertThat(letter).doesNotContain(secrets(report));
            assertThat(letter).as("a full birth date").doesNotContainPattern(Pattern.compile("\\d\\d/\\d\\d/\\d{4}"));
            assertThat(letter).doesNotContainIgnoringCase("party");
            assertThat(sentences(office, dueNotice.notice())).allMatch(words -> words <= LONG_SENTENCE);
        }
    }

    private static String[] secrets(CaseReport report) {
        Envelope.Affirmation said = report.envelope().affirmation();
        return Stream.concat(
                        Stream.of(said.driversLicense(), String.valueOf(said.birthDate()), said.idLast4()),
                        report.voter().stream()
                                .flatMap(voter -> Stream.of(
                                        voter.driversLicense(),
                                        String.valueOf(voter.birthDate()),
                                        voter.voterId().value(),
                                        voter.idLast4())))
                .filter(text -> !text.isBlank())
                .map(text -> text.length() == 4 ? " " + text + " " : text)
                .toArray(String[]::new);
    }

    /** The length in words of every sentence, lists of contests and the references apart. */
    private static List<Integer> sentences(NoticeOffice office, Notice notice) {
        return as("carl", () -> office.service().letter(notice.key(), notice.number())).paragraphs().stream()
                .filter(text -> !text.startsWith("Counted: ") && !text.startsWith("Not counted: "))
                .filter(text -> !text.startsWith("The law: "))
                .flatMap(text -> Stream.of(text.split("[.?] ")))
                .map(sentence -> sentence.split(" ").length)
                .toList();
    }

    @OnADatabase
    void a_protected_address_stands_in_no_letter_and_on_no_list(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("protected_address");
        services.jdbc()
                .sql("update envelope set voter_signed = 'no' where election_id = ? and envelope_no = ?")
                .params(key.electionId(), key.envelopeNo())
                .update();
        office.primary().reviewing(key).work();
        Notice notice = office.ask(key, Ask.SIGNATURE);
        Voter voter = office.primary().reviewing(key).report().voter().orElseThrow();
        Envelope.Affirmation said =
                office.primary().reviewing(key).report().envelope().affirmation();
        assertThat(voter.confidential()).isTrue();
        assertThat(office.letter(notice))
                .contains(MailTo.HELD)
                .doesNotContain(voter.residence().street(), said.residence().line(), said.mailAddress());
        assertThat(as("jon", () -> office.service().due(new ElectionId(Primary.ID))))
                .filteredOn(dueNotice -> dueNotice.notice().key().equals(key))
                .singleElement()
                .satisfies(dueNotice -> assertThat(dueNotice.to().address()).isEqualTo(MailTo.HELD));
    }

    @OnADatabase
    void the_letter_logged_is_the_letter_printed(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice notice = office.ask(NoticeOffice.key(new EnvelopeNumber("P-1009")), Ask.IDENTIFICATION);
        Letter printed = as("jon", () -> office.service().letter(notice.key(), notice.number()));
        office.at(NoticeOffice.NOON.plusDays(1));
        office.logged("jon", notice, NoticeOffice.NOON);
        assertThat(as("jon", () -> office.service().attempts(notice.key(), notice.number())))
                .singleElement()
                .satisfies(attempt -> assertThat(attempt.letterHash()).isEqualTo(printed.hash()));
    }
}
