package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.ChallengeFact;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.OtherEnvelopeFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.facts.RecordedAnswer;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.file.SearchSummary;
import org.proviso.roll.RollService;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * How a reviewer answers the questions of a case: ChooseVoterSheet, SearchSheet, PollBookSheet, ChooseEnvelopeSheet,
 * OverrideAnswerSheet.
 */
@OnPages
class QuestionSheetsTest {

    @Autowired
    private PageDriver pages;

    private void onTheCase(EnvelopeKey key, Runnable act) {
        pages.on("review/case/" + key.envelopeNo(), "ada", act);
    }

    private static <W extends Enum<W> & FactWord> @Nullable W fact(EnvelopeKey key, Fact<W> fact) {
        return PagesOffice.file(key).report().settled().facts().one(fact);
    }

    @Test
    void another_voter_is_chosen_with_a_reason() {
        EnvelopeKey key = PagesOffice.taken("P-1026");
        VoterId named = PagesOffice.file(key).report().link().voterId();
        onTheCase(key, () -> {
            press("Choose another voter");
            press("Link voter");
            assertThat(marked("Who is the voter?")).isEqualTo("Choose a voter.");
            fill("Search the roll by name, date of birth or voter ID", "T5271687");
            fill("Who is the voter?", voter("T5271687"));
            press("Link voter");
            assertThat(said()).contains("Give a reason for choosing a voter whom the match did not name.");
            assertThat(PagesOffice.file(key).report().link().voterId()).isEqualTo(named);
            fill("Reason", "The signature is hers.");
            press("Link voter");
        });
        assertThat(PagesOffice.file(key).report().link())
                .satisfies(link -> assertThat(link.voterId()).isEqualTo(new VoterId("T5271687")))
                .satisfies(link -> assertThat(link.isSettled()).isTrue());
    }

    private static Voter voter(String id) {
        return PagesOffice.the(RollService.class)
                .voter(PagesOffice.ELECTION, new VoterId(id))
                .orElseThrow();
    }

    @Test
    void a_search_that_found_nothing_has_looked_everywhere() {
        EnvelopeKey key = PagesOffice.taken("P-1007");
        onTheCase(key, () -> {
            press("Record a search");
            press("Record search");
            assertThat(marked("Result")).isEqualTo("Enter the result of the search.");
            fill("Result", SearchFound.NOTHING);
            fill("Places searched", EnumSet.of(SearchPlace.values()[0]));
            press("Record search");
            assertThat(said()).contains("Before you record that the voter is not registered, look at: ");
            assertThat(PagesOffice.file(key).work().searches()).isEmpty();
            fill("Places searched", EnumSet.allOf(SearchPlace.class));
            fill("Note", "Asked the state too.");
            press("Record search");
        });
        assertThat(PagesOffice.file(key).work().searches())
                .extracting(SearchSummary::found, SearchSummary::note)
                .containsExactly(tuple(SearchFound.NOTHING, "Asked the state too."));
        assertThat(fact(key, Fact.IDENTITY)).isEqualTo(VoterIdentityFact.NOT_ON_ROLL);
        onTheCase(key, () -> {
            press("Take back the search");
            press("Take back search");
            assertThat(marked("Reason")).startsWith("Required.");
            fill("Reason", "It was about another envelope.");
            press("Take back search");
            assertThat(said()).contains("Taken back: It was about another envelope.");
        });
        assertThat(fact(key, Fact.IDENTITY)).isNotEqualTo(VoterIdentityFact.NOT_ON_ROLL);
    }

    @Test
    void a_search_names_no_envelope_that_is_not_there() {
        EnvelopeKey key = PagesOffice.taken("P-1011");
        onTheCase(key, () -> {
            press("Record a search");
            fill("Result", SearchFound.OTHER_COUNTY);
            fill("Same voter as envelope (optional)", "P-0000");
            press("Record search");
            assertThat(said()).contains("This election has no envelope P-0000.");
        });
        assertThat(PagesOffice.file(key).work().searches()).isEmpty();
    }

    @Test
    void what_the_poll_book_shows_is_recorded_with_what_was_seen() {
        checkedInElsewhere("T6852104");
        EnvelopeKey key = PagesOffice.linked("P-1048");
        assertThat(fact(key, Fact.CHECK_IN)).isEqualTo(CheckInFact.ELSEWHERE_UNSEEN);
        String seen = "Book, line and signature you saw";
        onTheCase(key, () -> {
            press("Record poll book check");
            press("Record check");
            assertThat(marked("What the poll book shows")).isEqualTo("Choose whether the voter signed there.");
            fill("What the poll book shows", false);
            press("Record check");
            assertThat(marked(seen)).isEqualTo("Required. Enter which book, which line and whose signature.");
            assertThat(fact(key, Fact.CHECK_IN)).isEqualTo(CheckInFact.ELSEWHERE_UNSEEN);
            fill(seen, "Book 2, line 14: her sister's.");
            press("Record check");
        });
        assertThat(fact(key, Fact.CHECK_IN)).isEqualTo(CheckInFact.NOT_THEIRS);
        assertThat(PagesOffice.file(key).work().answers())
                .extracting(RecordedAnswer::reason)
                .containsExactly("Book 2, line 14: her sister's.");
        onTheCase(key, () -> assertThat(said()).contains("Withdraw poll book check"));
        PagesOffice.done(
                "ada",
                () -> PagesOffice.the(AnswerService.class)
                        .withdrawAnswer(key, PagesOffice.version(key), Fact.CHECK_IN));
        assertThat(fact(key, Fact.CHECK_IN)).isEqualTo(CheckInFact.ELSEWHERE_UNSEEN);
    }

    /** In the sample nobody with an envelope got a ballot at another place too. */
    private static void checkedInElsewhere(String voter) {
        PagesOffice.primary().office().services().jdbc().sql("""
                        insert into check_in (election_id, snapshot_no, row_no, voter_id, voting_location,
                                checked_in_at, kind, ballot_issued)
                        select election_id, snapshot_no, max(row_no) + 1, ?, 'Fairgrounds Pavilion',
                                timestamp '2026-08-04 09:10:00', 'regular', 'yes'
                        from check_in group by election_id, snapshot_no""").param(voter).update();
    }

    @Test
    void one_of_the_voters_envelopes_is_chosen_with_a_reason() {
        PagesOffice.linked("P-1002");
        EnvelopeKey key = PagesOffice.linked("P-1024");
        onTheCase(key, () -> {
            press("Choose this envelope to count");
            press("Choose this envelope");
            assertThat(said()).contains("Give a reason for choosing this envelope to count.");
            assertThat(fact(key, Fact.OTHER_ENVELOPE)).isNotEqualTo(OtherEnvelopeFact.NOT_COUNTED);
            fill("Why this envelope", "It was cast first.");
            press("Choose this envelope");
        });
        assertThat(fact(key, Fact.OTHER_ENVELOPE)).isEqualTo(OtherEnvelopeFact.NOT_COUNTED);
    }

    @Test
    void the_records_are_overridden_with_an_answer_and_a_reason() {
        EnvelopeKey key = PagesOffice.taken("P-1014");
        onTheCase(key, () -> {
            press("Override this answer");
            press("Record answer");
            assertThat(marked("Answer")).isEqualTo("Choose an answer.");
            fill("Fact", Fact.CHALLENGE);
            fill("Answer", Set.<FactWord>of(ChallengeFact.OVERRULED));
            press("Record answer");
            assertThat(marked("Reason")).isEqualTo("Required. Give a reason for overriding the records.");
            assertThat(PagesOffice.file(key).work().answers()).isEmpty();
            fill("Reason", "The challenger did not appear.");
            press("Record answer");
        });
        assertThat(PagesOffice.file(key).work().answers())
                .extracting(RecordedAnswer::fact, RecordedAnswer::words, RecordedAnswer::reason)
                .containsExactly(
                        tuple(Fact.CHALLENGE, Set.of(ChallengeFact.OVERRULED), "The challenger did not appear."));
    }
}
