package org.proviso.notices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
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
                .contains("register now for the next election");
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
