package org.proviso.journey.chance;

import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.proviso.access.Permission;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.database.OfficeTime;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.election.RulesService;
import org.proviso.journey.Truth;
import org.proviso.journey.chance.Attempt.Version;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;

/** The small election in an office of seventeen people, and what a play needs to see of it. */
final class ChanceOffice {

    static final ElectionId ID = SmallElection.ID;

    /** Old versions and people without the permission, of a hundred acts. */
    private static final int ODD_PERCENT = 4;

    private static final Map<String, Role> STAFF = Map.ofEntries(
            Map.entry("ada", Role.REVIEWER),
            Map.entry("ben", Role.REVIEWER),
            Map.entry("cleo", Role.REVIEWER),
            Map.entry("carl", Role.SUPERVISOR),
            Map.entry("dora", Role.SUPERVISOR),
            Map.entry("eve", Role.DECIDER),
            Map.entry("fay", Role.DECIDER),
            Map.entry("gil", Role.DECIDER),
            Map.entry("hugo", Role.DECIDER),
            Map.entry("ines", Role.DECIDER),
            Map.entry("hal", Role.RELEASE_TEAM),
            Map.entry("ida", Role.RELEASE_TEAM),
            Map.entry("jon", Role.INTAKE),
            Map.entry("kim", Role.INTAKE),
            Map.entry("lee", Role.INTAKE),
            Map.entry("obi", Role.OBSERVER),
            Map.entry("una", Role.ADMINISTRATOR));

    private final TestOffice services;
    private final SmallElection election;
    private final PlainFigures figures;
    private LocalDateTime now = LocalDateTime.of(2026, 8, 5, 9, 0);

    private ChanceOffice(TestOffice services, SmallElection election) {
        this.services = services;
        this.election = election;
        this.figures =
                new PlainFigures(election.paper().size() - election.toReceive().size());
    }

    /** The office on the morning after the election, loaded and with nothing done yet. */
    static ChanceOffice opened(TestOffice services, SmallElection election) {
        services.empty();
        services.begin("the chance primary from " + election.folder(), () -> {
            STAFF.keySet().stream().sorted().forEach(name -> Staff.hire(services, name, STAFF.get(name)));
            as("carl", () -> accepted(services.the(ElectionLoadService.class).load(election.folder())));
            decidedBy(services, election.decider());
        });
        ChanceOffice office = new ChanceOffice(services, election);
        office.clock(office.now);
        return office;
    }

    /** As counsel wrote to the county, where the pack says that a board decides. */
    private static void decidedBy(TestOffice services, DeciderKind decider) {
        if (decider != DeciderKind.BOARD) {
            services.jdbc()
                    .sql("insert into county_ruling values (?, 'decider.kind', ?, 'A. Reyes', ?, 'letter of counsel')")
                    .params(ID.value(), decider.code(), LocalDate.of(2026, 8, 1))
                    .update();
            services.inTransaction(() -> services.the(RulesService.class).keep(ID));
        }
    }

    TestOffice services() {
        return services;
    }

    SmallElection election() {
        return election;
    }

    PlainFigures figures() {
        return figures;
    }

    <T> T the(Class<T> service) {
        return services.the(service);
    }

    LocalDateTime now() {
        return now;
    }

    void clock(LocalDateTime moment) {
        now = moment;
        OfficeTime.set(services, moment);
    }

    /** The staff that may do it, by name. */
    static List<String> permitted(Permission act) {
        return STAFF.keySet().stream()
                .filter(name -> isPermitted(name, act))
                .sorted()
                .toList();
    }

    static boolean isPermitted(String name, Permission act) {
        return act.isOpenTo(java.util.Set.of(STAFF.get(name)));
    }

    /** Mostly somebody who may do it. */
    static String somebody(Random random, Permission act) {
        return isOdd(random) ? pick(random, STAFF.keySet().stream().sorted().toList()) : pick(random, permitted(act));
    }

    static boolean isOdd(Random random) {
        return random.nextInt(100) < ODD_PERCENT;
    }

    static <T> T pick(Random random, List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    /** Mostly the version as it is. */
    static Version seen(Random random, int version) {
        return isOdd(random) ? new Version(version - 1, true) : new Version(version, false);
    }

    static EnvelopeKey key(EnvelopeNumber number) {
        return new EnvelopeKey(ID, number);
    }

    Truth truth(EnvelopeKey key) {
        return election.truths().get(key.envelopeNo());
    }

    List<EnvelopeCase> cases() {
        return the(CaseService.class).all(ID);
    }

    List<EnvelopeCase> cases(Predicate<EnvelopeCase> which) {
        return cases().stream().filter(which).toList();
    }

    List<EnvelopeCase> in(CaseState state) {
        return the(CaseService.class).inState(ID, state);
    }

    EnvelopeCase now(EnvelopeKey key) {
        return the(CaseService.class).find(key).orElseThrow();
    }

    /** Envelopes that still lie in their bags. */
    List<EnvelopeNumber> notReceived() {
        List<EnvelopeNumber> waiting = new ArrayList<>(election.toReceive());
        waiting.removeAll(cases().stream()
                .map(envelopeCase -> envelopeCase.key().envelopeNo())
                .toList());
        return waiting;
    }

    Map<CaseState, Integer> states() {
        Map<CaseState, Integer> states = new EnumMap<>(CaseState.class);
        cases().forEach(envelopeCase -> states.merge(envelopeCase.state(), 1, Integer::sum));
        return states;
    }

    /** What one of the staff reads. */
    <T> T read(String who, Supplier<T> reading) {
        return as(who, reading);
    }
}
