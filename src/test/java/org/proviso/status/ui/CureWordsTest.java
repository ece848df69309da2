package org.proviso.status.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope.Source;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.rules.Ask;
import org.proviso.status.Arrival;
import org.proviso.status.LaterIdentification;
import org.proviso.status.LookupResult;
import org.proviso.status.VoterAsk;
import org.proviso.status.VoterCaseState;
import org.springframework.context.support.ResourceBundleMessageSource;

/** What the page says of what may be brought and how, where the rule pack says it and where it does not. */
class CureWordsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 3);
    private static final Locale SPANISH = Locale.forLanguageTag("es");
    private static final LaterIdentification NOTHING_LISTED =
            new LaterIdentification(false, false, List.of(), List.of());

    @Test
    void the_page_lists_what_the_pack_accepts_and_the_ways_it_gives() {
        LaterIdentification papers =
                new LaterIdentification(false, true, List.of("photo_id"), List.of("natural_disaster"));
        List<String> ways = List.of("in_person", "mail", "email");
        VoterAnswer answer = answer(papers, ways, Set.of(), Locale.ENGLISH);
        assertThat(answer.papers())
                .containsSubsequence("We accept any one of these:", "A photo ID.")
                .contains("You have no identification because of a natural disaster.")
                .noneMatch(line -> line.startsWith("State law says"));
        assertThat(answer.toDo().get(0).words())
                .contains(
                        "Show us one of the things on our list below.",
                        "You may do this in person, by mail or by email.");
        assertThat(answer.send()).startsWith("How you may send it is said above.");
        assertThat(answer(papers, ways, Set.of(), SPANISH).toDo().get(0).words())
                .contains("Puede hacerlo en persona, por correo o por correo electr\u00f3nico.");
    }

    @Test
    void a_pack_that_says_nothing_leaves_it_to_a_call_and_one_that_wants_the_voter_there_offers_no_copy() {
        VoterAnswer answer = answer(NOTHING_LISTED, List.of(), Set.of(), Locale.ENGLISH);
        assertThat(answer.papers()).first().asString().startsWith("State law says which papers we can accept.");
        assertThat(answer.send()).startsWith("You may also mail it to this address.");
        assertThat(answer.toDo().get(0).words()).singleElement().asString().contains("send us a copy");
        assertThat(answer(NOTHING_LISTED, List.of("in_person"), Set.of(), Locale.ENGLISH)
                        .toDo()
                        .get(0)
                        .words())
                .contains("You may do this in person.")
                .noneMatch(line -> line.contains("copy"));
    }

    @Test
    void while_no_meeting_is_called_the_page_says_so_and_whom_to_call() {
        VoterAnswer.ToDo toDo = answer(NOTHING_LISTED, List.of(), Set.of(Ask.IDENTIFICATION), Locale.ENGLISH)
                .toDo()
                .get(0);
        assertThat(toDo.must())
                .startsWith("It must reach us before the board meets. The date is not set yet.")
                .endsWith("call us before you come: 555-0100.");
        assertThat(toDo.until()).isEmpty();
        assertThat(answer(NOTHING_LISTED, List.of(), Set.of(Ask.IDENTIFICATION), SPANISH)
                        .toDo()
                        .get(0)
                        .must())
                .startsWith("Debe llegarnos antes de que se re\u00fana la junta.");
        assertThat(answer(NOTHING_LISTED, List.of(), Set.of(), Locale.ENGLISH)
                        .toDo()
                        .get(0)
                        .must())
                .isEqualTo("Do this as soon as you can. Call us to ask for the deadline.");
    }

    private static VoterAnswer answer(
            LaterIdentification papers, List<String> ways, Set<Ask> untilTheMeeting, Locale language) {
        ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
        messages.setBasename("org/proviso/status/ui/status");
        messages.setDefaultEncoding("UTF-8");
        messages.setFallbackToSystemLocale(false);
        LookupResult.Found found = new LookupResult.Found(
                election(),
                VoterCaseState.WAITS_FOR_YOU,
                List.of(),
                List.of(new VoterAsk(Ask.IDENTIFICATION, null)),
                untilTheMeeting,
                Map.of(Ask.IDENTIFICATION, ways),
                new Arrival(Source.POLL, "Library", DAY, true),
                true,
                null,
                papers,
                LocalDateTime.of(2026, 11, 5, 9, 0));
        return new VoterAnswerWriter(messages).of(found, new ReceiptNumber("4817-2206-5"), language);
    }

    private static Election election() {
        return new Election(
                new ElectionId("small"),
                "Small Election",
                DAY,
                Election.Kind.GENERAL,
                "own",
                ZoneId.of("America/Chicago"),
                "example",
                new Election.DecidingBody(3, 2),
                new Election.Office("Small County Elections", "1 Court Sq", "555-0100", "", Map.of()),
                LocalTime.of(19, 0),
                List.of("en"),
                List.of(),
                Set.of(),
                List.of(),
                Election.Receipts.OWN);
    }
}
