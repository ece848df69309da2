package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.proviso.access.StaffList;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.canvass.replay.ElectionReplayVerdict;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.replay.CaseReplay;
import org.proviso.roll.RollService;

/** Fifty people at once on sixty envelopes: nothing is lost, doubled or overwritten. */
class ManyAtOnceTest {

    private static final int PEOPLE = 50;
    private static final int ATTEMPTS = 750;

    private static Map<String, Integer> inLedger(TestOffice office) {
        Map<String, Integer> acts = new HashMap<>();
        office.the(LedgerService.class)
                .follow(
                        LedgerChain.of(new ElectionId(Primary.ID)),
                        entry ->
                                acts.merge(entry.act() + " " + entry.subject() + " " + entry.actor(), 1, Integer::sum));
        acts.keySet().removeIf(act -> act.startsWith("election_loaded"));
        return acts;
    }

    private static Map<String, Integer> accepted(TestOffice office, Crowd crowd) {
        StaffList staff = office.the(StaffList.class);
        Map<String, Integer> acts = new HashMap<>();
        crowd.accepted.forEach(done -> acts.merge(
                done.act() + " " + done.envelopeNo() + " "
                        + staff.user(done.by()).orElseThrow().actor().pseudonym(),
                1,
                Integer::sum));
        return acts;
    }

    @OnBothDatabases
    void every_accepted_act_is_in_the_ledger_once_and_the_tables_agree(TestOffice office) throws Exception {
        Primary.loaded(office);
        BusyReviewer.hire(office, PEOPLE);
        Crowd crowd = new Crowd(done -> {});
        AtomicInteger attempts = new AtomicInteger();
        crowd.work(office, PEOPLE, 7, () -> {
            int attempt = attempts.incrementAndGet();
            if (attempt % 100 == 0) {
                assertThat(office.the(CaseReplay.class)
                                .replay(new ElectionId(Primary.ID))
                                .first())
                        .as("compared while others act")
                        .isEmpty();
            }
            return attempt <= ATTEMPTS;
        });
        System.out.println(office.kind() + ": " + crowd);
        assertThat(crowd.givenUp).as("deadlocks").isEmpty();
        assertThat(crowd.accepted).hasSizeGreaterThan(100);
        assertThat(crowd.stale).as("people were in each other's way").hasPositiveValue();
        assertThat(inLedger(office)).isEqualTo(accepted(office, crowd));
        ElectionReplayVerdict replay = office.the(ElectionReplayService.class).replay(new ElectionId(Primary.ID));
        assertThat(replay.differences()).isEmpty();
        assertThat(replay.isWhole()).isTrue();
    }

    @OnBothDatabases
    void two_envelopes_are_linked_to_one_voter_at_the_same_moment(TestOffice office) throws Exception {
        Primary primary = Primary.loaded(office);
        List<EnvelopeKey> keys = primary.truths().keySet().stream()
                .map(number -> new EnvelopeKey(new ElectionId(Primary.ID), new EnvelopeNumber(number)))
                .limit(20)
                .toList();
        List<VoterId> voters = office.the(RollService.class).roll(new ElectionId(Primary.ID)).stream()
                .map(voter -> voter.voterId())
                .filter(id -> primary.truths().values().stream()
                        .noneMatch(truth -> truth.voterId().equals(id.value())))
                .limit(10)
                .toList();
        List<EnvelopeCase> taken = keys.stream()
                .map(key -> primary.taken(key, new UserName("ada")))
                .toList();
        for (int pair = 0; pair < voters.size(); pair++) {
            together(office, taken.get(2 * pair), taken.get(2 * pair + 1), voters.get(pair));
        }
        assertThat(office.the(CaseReplay.class)
                        .replay(new ElectionId(Primary.ID))
                        .first())
                .isEmpty();
        assertThat(office.jdbc()
                        .sql("select count(*) from person")
                        .query(Integer.class)
                        .single())
                .isEqualTo(10);
    }

    private static void together(TestOffice office, EnvelopeCase envelopeCase, EnvelopeCase other, VoterId voterId)
            throws Exception {
        ExecutorService two = Executors.newFixedThreadPool(2);
        CyclicBarrier start = new CyclicBarrier(2);
        List<Future<EnvelopeCase>> linked = new ArrayList<>();
        for (EnvelopeCase each : List.of(envelopeCase, other)) {
            linked.add(two.submit(() -> {
                start.await();
                return as(
                        "ada",
                        () -> Office.accepted(office.the(LinkService.class)
                                .confirm(new ConfirmLink(each.key(), each.version(), voterId, "Seen the file."))));
            }));
        }
        two.shutdown();
        for (Future<EnvelopeCase> each : linked) {
            assertThat(each.get().personId()).isEqualTo("voter:" + voterId);
        }
    }
}
