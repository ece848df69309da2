package org.proviso.review.queue;

import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.review.CaseStore;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.assess.SecondLooks;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What waits for a reviewer, and the next case to take: the voter's running clock first, then what changed, then by age. */
@Service
public class QueueService {

    private static final int TRIES = 8;

    private final QueueStore queue;
    private final QueueListStore lists;
    private final QueueChoiceStore choices;
    private final CaseStore all;
    private final CaseAssignmentService cases;
    private final AccessService access;
    private final StaffList staff;
    private final SecondLooks looks;
    private final Clock clock;

    QueueService(
            QueueStore queue,
            QueueListStore lists,
            QueueChoiceStore choices,
            CaseStore all,
            CaseAssignmentService cases,
            AccessService access,
            StaffList staff,
            SecondLooks looks,
            Clock clock) {
        this.queue = queue;
        this.lists = lists;
        this.choices = choices;
        this.all = all;
        this.cases = cases;
        this.access = access;
        this.staff = staff;
        this.looks = looks;
        this.clock = clock;
    }

    /** A page of the list. */
    @Transactional(readOnly = true)
    public List<QueueRow> page(QueueFilter filter, int offset, int limit) {
        access.demand(Permission.SEARCH);
        return lists.page(filter, before(filter), offset, limit);
    }

    /** How many cases match a filter. */
    @Transactional(readOnly = true)
    public int count(QueueFilter filter) {
        access.demand(Permission.SEARCH);
        return lists.count(filter, before(filter));
    }

    /** The values that a column has in the election and that contain what was typed, a page of them. */
    @Transactional(readOnly = true)
    public List<QueueChoice> choices(ElectionId electionId, QueueColumn column, String typed, int offset, int limit) {
        access.demand(Permission.SEARCH);
        return switch (column) {
            case LOCATION -> choices.locations(electionId, typed, offset, limit);
            case PRECINCT -> choices.precincts(electionId, typed, offset, limit);
            case LANGUAGE -> part(choices.languages(electionId).stream(), typed, offset, limit);
            case HOLDER -> part(choices.holders(electionId).stream(), typed, offset, limit);
            case REASON ->
                part(
                        choices.reasons(electionId).stream()
                                .flatMap(codes -> Stream.of(codes.split(";")))
                                .filter(code -> !code.isEmpty())
                                .distinct()
                                .sorted()
                                .map(code -> new QueueChoice(code, DateWords.code(code))),
                        typed,
                        offset,
                        limit);
            case PILE, STATE, OUTLOOK, AGE -> List.of();
        };
    }

    /** How a value of a column reads: a person by name, a code in words. */
    @Transactional(readOnly = true)
    public String words(QueueColumn column, String value) {
        access.demand(Permission.SEARCH);
        return switch (column) {
            case HOLDER ->
                staff.user(new UserName(value)).map(OfficeUser::fullName).orElse(value);
            case PILE -> Code.find(QueuePile.class, value).map(QueuePile::words).orElse(value);
            case REASON, STATE, OUTLOOK -> DateWords.code(value);
            case LOCATION, PRECINCT, LANGUAGE, AGE -> value;
        };
    }

    private static List<QueueChoice> part(Stream<QueueChoice> values, String typed, int offset, int limit) {
        String sought = typed.toLowerCase(java.util.Locale.ROOT);
        return values.filter(choice ->
                        choice.words().toLowerCase(java.util.Locale.ROOT).contains(sought))
                .skip(offset)
                .limit(limit)
                .toList();
    }

    /** Where a case stands in the order of a list; empty where there is no such case. */
    @Transactional(readOnly = true)
    public Optional<QueuePosition> position(QueueFilter filter, EnvelopeNumber envelopeNo) {
        access.demand(Permission.SEARCH);
        return lists.position(filter, envelopeNo);
    }

    /**
     * Takes the next case for whoever is signed in; empty where none waits. Those passed over are left out. Of two who
     * ask at the same moment each gets a case of their own: the act of taking is a transaction by itself.
     */
    public Optional<ActResult<EnvelopeCase>> takeNext(ElectionId electionId, Collection<EnvelopeNumber> passedOver) {
        SignatureLooker looker = looker(access.demand(Permission.PROPOSE), electionId);
        return taken(passedOver, leftOut -> queue.first(electionId, leftOut, looker));
    }

    private SignatureLooker looker(OfficeUser user, ElectionId electionId) {
        return new SignatureLooker(user.userName(), looks.isByTwoParties(electionId) ? user.party() : null);
    }

    /**
     * The next case of a list after a place in it, taken for whoever is signed in unless that person has it already; empty
     * where none follows that this person can work on.
     */
    public Optional<NextOfList> takeNextOf(
            QueueFilter filter, QueuePosition place, Collection<EnvelopeNumber> passedOver) {
        SignatureLooker worker = looker(access.demand(Permission.PROPOSE), filter.electionId());
        Map<EnvelopeNumber, QueuePosition> stood = new HashMap<>();
        return taken(
                        passedOver,
                        leftOut -> lists.next(filter, before(filter), place, worker, leftOut)
                                .flatMap(number -> {
                                    lists.position(filter, number).ifPresent(at -> stood.put(number, at));
                                    return all.find(new EnvelopeKey(filter.electionId(), number));
                                })
                                .map(found -> new CaseVersion(found.key(), found.version())))
                .map(taken -> new NextOfList(
                        taken, taken.ifAccepted().map(now -> stood.get(now.key().envelopeNo()))));
    }

    private Optional<ActResult<EnvelopeCase>> taken(
            Collection<EnvelopeNumber> passedOver, Function<Set<EnvelopeNumber>, Optional<CaseVersion>> next) {
        Set<EnvelopeNumber> leftOut = new LinkedHashSet<>(passedOver);
        for (int i = 0; i < TRIES; i++) {
            Optional<CaseVersion> first = next.apply(leftOut);
            if (first.isEmpty()) {
                return Optional.empty();
            }
            EnvelopeKey key = first.get().key();
            Optional<EnvelopeCase> yours = all.find(key).filter(this::isYours);
            if (yours.isPresent()) {
                return yours.map(ActResult::accepted);
            }
            try {
                return Optional.of(cases.take(key, first.get().version()));
            } catch (OptimisticLockingFailureException e) {
                leftOut.add(key.envelopeNo());
            }
        }
        return Optional.empty();
    }

    private boolean isYours(EnvelopeCase found) {
        return found.isWith(access.signedIn().userName());
    }

    private @Nullable Instant before(QueueFilter filter) {
        return filter.before(clock.instant());
    }
}
