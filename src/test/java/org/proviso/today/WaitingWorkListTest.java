package org.proviso.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.board.BoardService;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.canvass.CanvassService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.election.rules.RulingService;
import org.proviso.intake.keying.KeyingService;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.journey.Deciding;
import org.proviso.journey.NewerMailList;
import org.proviso.journey.Primary;
import org.proviso.notices.NoticeService;
import org.proviso.notices.told.ToldDateService;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.counts.CaseCountsService;
import org.proviso.review.decide.FollowUpService;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.facts.WaitsFor;
import org.proviso.review.mail.MailListService;
import org.proviso.review.news.NewerFileService;
import org.proviso.review.queue.WaitingSinceService;
import org.proviso.ui.frame.ElectionLine;

/** What stands on the start page of each role, and what does not. */
class WaitingWorkListTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);
    private static final Instant LONG_AGO = Instant.parse("2026-08-04T13:00:00Z");

    private static final Set<String> OF_INTAKE =
            Set.of("Envelopes not seen", "Silent location", "Voter whose time ends today", "Voters to notify");
    private static final Set<String> OF_REVIEW =
            Set.of("Envelopes to review", "Proposals waiting for second review", "Research without a result");
    private static final String CONTRADICTED = "Decisions contradicted by newer records";

    /** Noon two days after the election, with something of every kind that must not be forgotten. */
    private static Primary everythingWaits(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(2, 12, 0);
        List<EnvelopeKey> keys = primary.truths().values().stream()
                .map(truth -> new EnvelopeKey(PRIMARY, truth.envelopeNo()))
                .sorted(Comparator.comparing(key -> key.envelopeNo().value()))
                .toList();
        EnvelopeKey contradicted = primary.envelope("in_line_at_close");
        EnvelopeKey toOpen = primary.envelope("in_order");
        Deciding deciding = new Deciding(primary);
        deciding.settled(contradicted);
        deciding.settled(toOpen);
        keys.stream()
                .filter(key -> !key.equals(contradicted) && !key.equals(toOpen))
                .limit(20)
                .forEach(key -> primary.reviewing(key).work());
        new NewerMailList(primary).accepted(contradicted).inUse();
        new NewerMailList(primary).accepted(toOpen).brought();
        List<EnvelopeKey> untouched = office.the(CaseService.class).inState(PRIMARY, CaseState.OPEN).stream()
                .map(open -> open.key())
                .filter(key -> keys.indexOf(key) > 25)
                .toList();
        accepted(as(
                "ada",
                () -> office.the(ResearchService.class)
                        .ask(untouched.get(0), WaitsFor.ANOTHER_OFFICE, "The library", "Which clerk?")));
        update(office, untouched.get(1), "state = 'received', changed_at = ?", LONG_AGO.atOffset(ZoneOffset.UTC));
        primary.taken(untouched.get(2), new UserName("ada"));
        update(office, untouched.get(2), "taken_at = ?", LONG_AGO.atOffset(ZoneOffset.UTC));
        update(office, untouched.get(3), "queue_rank = 8, queue_at = ?", LocalDateTime.of(2026, 8, 6, 17, 0));
        accepted(as(
                "eve",
                () -> office.the(BoardService.class)
                        .callSession(new CallSession(
                                PRIMARY, BodyKind.BOARD, LocalDateTime.of(2026, 8, 7, 9, 0), "Room 1"))));
        office.jdbc()
                .sql("delete from transmittal where voting_location = 'Depot Street Library'")
                .update();
        return primary;
    }

    private static void update(TestOffice office, EnvelopeKey key, String set, Object value) {
        office.jdbc()
                .sql("update envelope_case set " + set + " where election_id = ? and envelope_no = ?")
                .params(value, key.electionId(), key.envelopeNo())
                .update();
    }

    private static List<WaitingWork> lines(TestOffice office, String who) {
        AccessService access = office.the(AccessService.class);
        OutOfBalance sums = new OutOfBalance(office.the(CanvassService.class));
        WaitingWorkList list = new WaitingWorkList(
                access,
                new IntakeWorkList(
                        access,
                        office.the(KeyingService.class),
                        office.the(NumberCheckService.class),
                        office.the(NoticeService.class),
                        office.the(ToldDateService.class)),
                office.the(ReleaseService.class),
                office.the(FollowUpService.class),
                office.the(EndedCaseService.class),
                office.the(ResearchService.class),
                office.the(WaitingSinceService.class),
                office.the(MailListService.class),
                new SupervisorWorkList(
                        access,
                        office.the(NewerFileService.class),
                        office.the(RulingService.class),
                        office.the(CanvassService.class)),
                office.the(BoardService.class));
        ElectionLine line = new ElectionLine(
                PRIMARY,
                "Tamarack",
                "Primary",
                LocalDate.of(2026, 8, 4),
                office.the(ElectionService.class).zone(PRIMARY),
                false);
        return as(who, () -> list.of(line, office.the(CaseCountsService.class).of(PRIMARY), sums.of(PRIMARY)));
    }

    private static Map<Role, List<WaitingWork>> byRole(TestOffice office) {
        Map<Role, List<WaitingWork>> all = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            if (role != Role.PUBLIC) {
                String who = "only_" + role.code();
                Staff.hire(office, who, role);
                all.put(role, lines(office, who));
            }
        }
        return all;
    }

    private static List<String> what(List<WaitingWork> lines) {
        return lines.stream().map(WaitingWork::what).toList();
    }

    @OnADatabase
    void each_role_finds_its_own_work_and_nobody_elses(TestOffice office) {
        everythingWaits(office);
        Map<Role, List<WaitingWork>> all = byRole(office);
        assertThat(what(all.get(Role.INTAKE))).containsExactlyInAnyOrderElementsOf(OF_INTAKE);
        assertThat(what(all.get(Role.REVIEWER)))
                .containsAll(OF_INTAKE)
                .containsAll(OF_REVIEW)
                .hasSize(OF_INTAKE.size() + OF_REVIEW.size());
        assertThat(what(all.get(Role.DECIDER))).containsExactly(CONTRADICTED, "Envelopes ready to decide");
        assertThat(what(all.get(Role.RELEASE_TEAM))).containsExactly("Envelopes to open");
        assertThat(what(all.get(Role.SUPERVISOR)))
                .containsAll(OF_INTAKE)
                .containsAll(OF_REVIEW)
                .contains(
                        CONTRADICTED, "Newer lists to confirm", "Case held without an act", "Steps left before closing")
                .hasSize(OF_INTAKE.size() + OF_REVIEW.size() + 4);
        assertThat(what(all.get(Role.SECRETARY))).containsExactly("Session to keep the record of");
        assertThat(path(all.get(Role.SECRETARY), "Session to keep the record of"))
                .isEqualTo("board/record/1");
        assertThat(all.get(Role.ADMINISTRATOR)).isEmpty();
        assertThat(all.get(Role.OBSERVER)).isEmpty();
    }

    @OnADatabase
    void the_oldest_stands_first_after_what_may_be_a_second_vote(TestOffice office) {
        everythingWaits(office);
        List<WaitingWork> lines = byRole(office).get(Role.SUPERVISOR);
        assertThat(lines.get(0).what()).isEqualTo(CONTRADICTED);
        List<Instant> ages =
                lines.stream().map(WaitingWork::since).filter(Objects::nonNull).toList();
        assertThat(ages).isSorted().hasSizeGreaterThan(4);
        assertThat(lines.stream().skip(1).limit(ages.size())).allMatch(line -> line.since() != null);
        assertThat(ages)
                .as("of the envelope not seen, and of the case that is held")
                .contains(LONG_AGO);
    }

    @OnADatabase
    void every_line_leads_to_where_it_is_done(TestOffice office) {
        everythingWaits(office);
        Map<Role, List<WaitingWork>> all = byRole(office);
        assertThat(path(all.get(Role.INTAKE), "Silent location"))
                .isEqualTo("intake/transmittals?place=Depot+Street+Library");
        assertThat(path(all.get(Role.INTAKE), "Voter whose time ends today"))
                .as("the desk has no queue")
                .isEqualTo("intake/cure");
        assertThat(path(all.get(Role.REVIEWER), "Voter whose time ends today")).isEqualTo("review");
        assertThat(path(all.get(Role.SUPERVISOR), "Case held without an act"))
                .as("it is released on its own page")
                .startsWith("review/case/P-");
        assertThat(path(all.get(Role.SUPERVISOR), "Research without a result")).isEqualTo("review/research");
        assertThat(path(all.get(Role.DECIDER), CONTRADICTED)).isEqualTo("board/contradicted");
    }

    private static String path(List<WaitingWork> lines, String what) {
        return lines.stream()
                .filter(line -> line.what().equals(what))
                .map(WaitingWork::path)
                .findFirst()
                .orElseThrow();
    }

    @OnADatabase
    void what_is_not_late_yet_is_not_called_late(TestOffice office) {
        Primary primary = everythingWaits(office);
        update(
                office,
                held(office),
                "taken_at = ?",
                Instant.parse("2026-08-06T09:00:00Z").atOffset(ZoneOffset.UTC));
        office.jdbc()
                .sql("update envelope_case set changed_at = ? where state = 'received'")
                .param(Instant.parse("2026-08-06T09:00:00Z").atOffset(ZoneOffset.UTC))
                .update();
        office.jdbc()
                .sql("update envelope_case set queue_at = ? where queue_rank = 8")
                .param(LocalDateTime.of(2026, 8, 7, 0, 0))
                .update();
        assertThat(what(byRole(office).get(Role.SUPERVISOR)))
                .doesNotContain("Case held without an act", "Envelopes not seen")
                .noneMatch(WaitingWorkListTest::isOfTimeThatEnds);
        primary.at(2, 17, 1);
        office.jdbc()
                .sql("update envelope_case set queue_at = ? where queue_rank = 8")
                .param(LocalDateTime.of(2026, 8, 6, 17, 0))
                .update();
        assertThat(what(lines(office, "carl"))).as("it has ended").noneMatch(WaitingWorkListTest::isOfTimeThatEnds);
    }

    private static boolean isOfTimeThatEnds(String what) {
        return what.endsWith("whose time ends today");
    }

    private static EnvelopeKey held(TestOffice office) {
        return office.the(CaseService.class).inState(PRIMARY, CaseState.IN_REVIEW).stream()
                .map(one -> one.key())
                .findFirst()
                .orElseThrow();
    }
}
