package org.proviso.review.acts;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseActSteps;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.facts.ResearchRequest;
import org.proviso.review.facts.ResearchStore;
import org.proviso.review.facts.WaitsFor;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;

/** Questions put to somebody about a case: another office, a poll worker, a colleague. They change no fact by themselves. */
@Service
public class ResearchService {

    private static final int LONGEST = 4_000;
    private static final int MOST_OF_A_NAME = 200;

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final ResearchStore requests;
    private final CaseAssignmentService assignments;
    private final AccessService access;
    private final StaffList staff;

    ResearchService(
            CaseDoor door,
            CaseActSteps steps,
            ResearchStore requests,
            CaseAssignmentService assignments,
            AccessService access,
            StaffList staff) {
        this.access = access;
        this.staff = staff;
        this.door = door;
        this.steps = steps;
        this.requests = requests;
        this.assignments = assignments;
    }

    /** Asks something and gives the case back: it waits for the answer, and nobody has it. Both or neither. */
    @Transactional
    public ActResult<EnvelopeCase> askAndGiveBack(
            EnvelopeKey key, int version, WaitsFor waitsFor, String addressee, String asked) {
        ActResult<EnvelopeCase> given = assignments
                .giveBack(key, version)
                .then(back -> ask(key, waitsFor, addressee, asked).map(number -> back));
        if (given.isRefused()) {
            TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
        }
        return given;
    }

    /** Asks something; the number of the request. */
    @Transactional
    public ActResult<Integer> ask(EnvelopeKey key, WaitsFor waitsFor, String addressee, String asked) {
        LockedCase act = door.demand(Permission.SEARCH)
                .lock(key)
                .refuse(() -> nobody(addressee))
                .refuse(() -> notWritten("asked", asked));
        AtomicInteger number = new AtomicInteger();
        return act.save(seen -> {
                    number.set(requests.insert(
                            key, waitsFor, addressee.strip(), asked, act.user().userName()));
                    return seen;
                })
                .record("research_asked", () -> Map.of("asked", steps.hidden(key, asked), "request", number.get()))
                .map(now -> number.get());
    }

    /** Notes what came back. */
    @Transactional
    public ActResult<EnvelopeCase> recordAnswer(EnvelopeKey key, int number, int version, String found) {
        LockedCase act = door.demand(Permission.SEARCH).lock(key).refuse(() -> notWritten("found", found));
        return act.save(seen -> {
                    requests.found(key, number, version, found, act.user().userName());
                    return seen;
                })
                .record("research_answered", () -> Map.of("found", steps.hidden(key, found), "request", number));
    }

    /** A request without an answer: its envelope, who has to answer, of whom what was asked, when (UTC) and by whom, by name. */
    public record WaitingRequest(
            EnvelopeKey key,
            int number,
            WaitsFor waitsFor,
            String addressee,
            String asked,
            String askedBy,
            Instant askedAt,
            int version) {}

    /** Requests of the election that wait for an answer, the oldest first. */
    @Transactional(readOnly = true)
    public List<WaitingRequest> waiting(ElectionId electionId) {
        access.demand(Permission.SEARCH);
        Map<String, String> names = new HashMap<>();
        return requests.open(electionId).stream()
                .map(open -> waiting(
                        open.key(),
                        open.request(),
                        names.computeIfAbsent(open.request().askedBy(), this::nameOf)))
                .toList();
    }

    /** A page of the requests that wait for an answer of one of these, the oldest first. */
    @Transactional(readOnly = true)
    public List<WaitingRequest> waiting(ElectionId electionId, Set<WaitsFor> waitsFor, int offset, int limit) {
        access.demand(Permission.SEARCH);
        return requests.open(electionId, waitsFor, offset, limit).stream()
                .map(open -> waiting(open.key(), open.request(), open.request().askedBy()))
                .toList();
    }

    /** How many requests wait for an answer of one of these. */
    @Transactional(readOnly = true)
    public int count(ElectionId electionId, Set<WaitsFor> waitsFor) {
        access.demand(Permission.SEARCH);
        return requests.count(electionId, waitsFor);
    }

    private String nameOf(String askedBy) {
        return staff.user(new UserName(askedBy)).map(OfficeUser::fullName).orElse(askedBy);
    }

    private static WaitingRequest waiting(EnvelopeKey key, ResearchRequest request, String askedBy) {
        return new WaitingRequest(
                key,
                request.number(),
                request.waitsFor(),
                request.addressee(),
                request.asked(),
                askedBy,
                request.askedAt(),
                request.version());
    }

    private static Optional<Refusal> nobody(String addressee) {
        return addressee.isBlank() || addressee.length() > MOST_OF_A_NAME
                ? Optional.of(Refusal.at("addressee", Why.NO_REASON, "Required. Enter whom you ask."))
                : Optional.empty();
    }

    private static Optional<Refusal> notWritten(String field, String text) {
        return text.isBlank() || text.length() > LONGEST
                ? Optional.of(Refusal.at(field, Why.NO_REASON, "Write between 1 and 4,000 characters."))
                : Optional.empty();
    }
}
