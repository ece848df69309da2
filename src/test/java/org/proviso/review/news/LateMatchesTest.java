package org.proviso.review.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.UpdatedRoll;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.intake.IntakeService;
import org.proviso.journey.Primary;
import org.proviso.journey.Truth;
import org.proviso.review.NewerRollFile;
import org.proviso.review.facts.LinkStore;
import org.proviso.roll.LookupService;
import org.proviso.roll.RollIndexCache;
import org.proviso.roll.RollMatches;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;

/** A newer roll that differs in few voters moves the cases it concerns, without a new index. */
class LateMatchesTest {

    @TempDir
    private Path temporary;

    @OnADatabase
    void only_cases_that_the_newer_roll_may_concern_are_matched_and_assessed_anew(TestOffice services)
            throws IOException {
        Primary primary = Primary.loaded(services);
        RollIndexCache holder = prepared(services);
        EnvelopeKey key = primary.envelope("in_order");
        String voter = primary.truth(key).voterId();
        Map<EnvelopeNumber, List<Integer>> before = written(services);
        NewListResult brought = bring(services, new NewerRollFile().remove(new VoterId(voter)));
        assertThat(holder.roll(new ElectionId(Primary.ID)).changed())
                .as("over the index there was")
                .isEqualTo(1);
        assertThat(Key.text(
                        services.the(LinkStore.class).newest(key).orElseThrow().voterId()))
                .isNotEqualTo(voter);
        Set<EnvelopeNumber> moved = new HashSet<>();
        written(services).forEach((number, counts) -> {
            if (!counts.equals(before.get(number))) {
                moved.add(number);
            }
        });
        assertThat(moved).contains(key.envelopeNo());
        Set<EnvelopeNumber> ofVoter = primary.truths().values().stream()
                .filter(truth -> voter.equals(truth.voterId()))
                .map(Truth::envelopeNo)
                .collect(Collectors.toSet());
        assertThat(ofVoter).as("nobody else's case is touched").containsAll(moved);
        assertThat(((NewListResult.InUse) brought).changed())
                .extracting(changed -> changed.key().envelopeNo())
                .isSubsetOf(moved);
    }

    @OnADatabase
    void a_newer_roll_with_other_statuses_only_matches_nobody_anew(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        RollIndexCache holder = prepared(services);
        EnvelopeKey key = primary.envelope("in_order");
        Link before = services.the(LinkStore.class).newest(key).orElseThrow();
        bring(
                services,
                new NewerRollFile()
                        .change(new VoterId(primary.truth(key).voterId()), row -> row.set("status", "cancelled")));
        assertThat(holder.roll(new ElectionId(Primary.ID)).changed()).isZero();
        assertThat(services.the(LinkStore.class).newest(key)).contains(before);
        assertThat(rows(services, "link", key.envelopeNo())).isEqualTo(1);
    }

    @OnADatabase
    void cases_come_out_as_if_all_had_been_matched_to_an_index_made_anew(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        RollIndexCache holder = prepared(services);
        Set<String> voters = primary.truths().values().stream()
                .map(Truth::voterId)
                .filter(id -> !id.isEmpty())
                .collect(Collectors.toSet());
        List<Envelope> open = services.the(IntakeService.class).envelopes(new ElectionId(Primary.ID));
        int moved = 0;
        for (int seed = 1; seed <= 3; seed++) {
            Map<EnvelopeNumber, Link> before = links(services, open);
            Map<EnvelopeNumber, Integer> links = new HashMap<>();
            before.keySet().forEach(number -> links.put(number, rows(services, "link", number)));
            bring(services, new NewerRollFile().shaken(new Random(seed), voters));
            Map<EnvelopeNumber, Link> now = links(services, open);
            Map<EnvelopeNumber, Link> all = services.the(RollMatches.class).presumed(new ElectionId(Primary.ID), open);
            Map<EnvelopeNumber, Link> anew =
                    RollMatches.presumed(services.the(RollService.class).roll(new ElectionId(Primary.ID)), open);
            for (Envelope envelope : open) {
                EnvelopeNumber number = envelope.envelopeNo();
                boolean same = now.get(number).saysTheSame(before.get(number));
                moved += same ? 0 : 1;
                assertThat(rows(services, "link", number)).isEqualTo(links.get(number) + (same ? 0 : 1));
                assertThat(now.get(number).saysTheSame(all.get(number)))
                        .as("%s%n%s", now.get(number), all.get(number))
                        .isTrue();
                assertThat(now.get(number).identity())
                        .isEqualTo(anew.get(number).identity());
                assertThat(Key.text(now.get(number).voterId()))
                        .isEqualTo(Key.text(anew.get(number).voterId()));
            }
        }
        assertThat(moved).isGreaterThan(10);
        assertThat(holder.isReading()).isFalse();
    }

    @OnADatabase
    void a_trial_that_is_taken_back_leaves_the_look_up_as_it_was(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        RollIndexCache holder = prepared(services);
        EnvelopeKey key = primary.envelope("in_order");
        String voter = primary.truth(key).voterId();
        UpdatedRoll before = holder.roll(new ElectionId(Primary.ID));
        primary.reviewing(key).work();
        CaseEventListenerTest.decide(primary, key, org.proviso.core.deciding.DecisionOutcome.COUNT, List.of(), "");
        assertThat(bring(
                        services,
                        new NewerRollFile()
                                .change(
                                        new VoterId(voter),
                                        row -> row.set("status", "cancelled").set("last_name", "Quennell"))))
                .isInstanceOf(NewListResult.WaitsForSecond.class);
        assertThat(holder.roll(new ElectionId(Primary.ID))).isSameAs(before);
        LookupService lookup = services.the(LookupService.class);
        assertThat(as("ada", () -> lookup.named(new ElectionId(Primary.ID), "Quennell", "", 5)))
                .isEmpty();
    }

    @OnADatabase
    void the_look_up_finds_the_newer_record_and_not_the_older(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        prepared(services);
        String voter = primary.truth(primary.envelope("in_order")).voterId();
        bring(services, new NewerRollFile().change(new VoterId(voter), row -> row.set("last_name", "Quennell")));
        LookupService lookup = services.the(LookupService.class);
        assertThat(as("ada", () -> lookup.named(new ElectionId(Primary.ID), "Quennell", "", 5)))
                .singleElement()
                .satisfies(found -> assertThat(found.voterId().value()).isEqualTo(voter));
        assertThat(as("ada", () -> lookup.numbered(new ElectionId(Primary.ID), voter, 5)))
                .hasSize(1);
    }

    @OnADatabase
    void where_many_voters_changed_a_new_index_is_made_beside_the_requests(TestOffice services) throws Exception {
        Primary.loaded(services);
        RollIndexCache holder = prepared(services);
        NewerRollFile newer = new NewerRollFile();
        List<VoterId> all = services.the(RollService.class).roll(new ElectionId(Primary.ID)).stream()
                .map(voter -> voter.voterId())
                .toList();
        all.stream().limit(all.size() / 10).forEach(id -> newer.change(id, row -> row.set("house_number", "9")));
        bring(services, newer);
        assertRenewed(holder);
        assertThat(holder.roll(new ElectionId(Primary.ID)).size()).isEqualTo(all.size());
    }

    private static void assertRenewed(RollIndexCache holder) throws InterruptedException {
        long until = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        while (holder.roll(new ElectionId(Primary.ID)).changed() > 0 && System.nanoTime() < until) {
            Thread.sleep(20);
        }
        assertThat(holder.roll(new ElectionId(Primary.ID)).changed()).isZero();
    }

    @OnADatabase
    void a_new_index_is_made_too_where_a_second_person_had_to_confirm(TestOffice services) throws Exception {
        Primary primary = Primary.loaded(services);
        RollIndexCache holder = prepared(services);
        EnvelopeKey key = primary.envelope("in_order");
        primary.reviewing(key).work();
        CaseEventListenerTest.decide(primary, key, org.proviso.core.deciding.DecisionOutcome.COUNT, List.of(), "");
        NewerRollFile newer = new NewerRollFile();
        services.the(RollService.class).roll(new ElectionId(Primary.ID)).stream()
                .limit(400)
                .forEach(voter -> newer.change(voter.voterId(), row -> row.set("house_number", "9")));
        newer.change(new VoterId(primary.truth(key).voterId()), row -> row.set("status", "cancelled"));
        NewListResult brought = bring(services, newer);
        int waits = ((NewListResult.WaitsForSecond) brought).snapshotNo();
        assertThat(holder.roll(new ElectionId(Primary.ID)).changed()).isZero();
        as("dora", () -> services.the(NewerFileService.class).confirm(new ElectionId(Primary.ID), waits));
        assertThat(services.the(RollService.class)
                        .voter(
                                new ElectionId(Primary.ID),
                                new VoterId(primary.truth(key).voterId()))
                        .orElseThrow()
                        .registration()
                        .status())
                .isEqualTo(org.proviso.core.RollStatus.CANCELLED);
        assertRenewed(holder);
    }

    @OnADatabase
    void an_envelope_keyed_or_corrected_is_matched_by_itself_with_the_index_there_is(TestOffice services)
            throws IOException {
        Primary primary = Primary.loaded(services);
        RollIndexCache holder = prepared(services);
        bring(
                services,
                new NewerRollFile()
                        .remove(new VoterId(
                                primary.truth(primary.envelope("in_order")).voterId())));
        UpdatedRoll roll = holder.roll(new ElectionId(Primary.ID));
        Matcher matcher = holder.matcher(new ElectionId(Primary.ID));
        Map<EnvelopeNumber, List<Integer>> before = written(services);
        EnvelopeKey key = primary.envelope("mail_surrendered");
        as(
                "carl",
                () -> services.inTransaction(() -> {
                    services.the(CaseEventListener.class)
                            .keyed(new org.proviso.intake.keying.EnvelopeKeyed(key.electionId(), key.envelopeNo()));
                    return true;
                }));
        assertThat(holder.roll(new ElectionId(Primary.ID))).isSameAs(roll);
        assertThat(holder.matcher(new ElectionId(Primary.ID))).isSameAs(matcher);
        Map<EnvelopeNumber, List<Integer>> now = written(services);
        assertThat(now.remove(key.envelopeNo()).get(0))
                .isEqualTo(before.remove(key.envelopeNo()).get(0) + 1);
        assertThat(now).as("no other envelope is matched").isEqualTo(before);
    }

    private RollIndexCache prepared(TestOffice services) {
        services.the(RollMatches.class).prepare(new ElectionId(Primary.ID));
        assertThat(services.the(RollIndexCache.class)
                        .roll(new ElectionId(Primary.ID))
                        .changed())
                .isZero();
        return services.the(RollIndexCache.class);
    }

    private NewListResult bring(TestOffice services, NewerRollFile newer) throws IOException {
        Path file = newer.in(temporary);
        return as(
                "carl",
                () -> services.the(NewerFileService.class).load(new ElectionId(Primary.ID), SnapshotKind.ROLL, file));
    }

    private static Map<EnvelopeNumber, Link> links(TestOffice services, List<Envelope> envelopes) {
        Map<EnvelopeNumber, Link> links = new HashMap<>();
        for (Envelope envelope : envelopes) {
            EnvelopeKey key = new EnvelopeKey(new ElectionId(Primary.ID), envelope.envelopeNo());
            links.put(
                    key.envelopeNo(), services.the(LinkStore.class).newest(key).orElseThrow());
        }
        return links;
    }

    /** How many links and assessments of each case were written down. */
    private static Map<EnvelopeNumber, List<Integer>> written(TestOffice services) {
        Map<EnvelopeNumber, List<Integer>> written = new HashMap<>();
        for (Envelope envelope : services.the(IntakeService.class).envelopes(new ElectionId(Primary.ID))) {
            EnvelopeNumber number = envelope.envelopeNo();
            written.put(number, List.of(rows(services, "link", number), rows(services, "assessment", number)));
        }
        return written;
    }

    private static int rows(TestOffice services, String table, EnvelopeNumber envelopeNo) {
        return services.jdbc()
                .sql("select count(*) from " + table + " where election_id = ? and envelope_no = ?")
                .params(Primary.ID, envelopeNo)
                .query(Integer.class)
                .single();
    }
}
