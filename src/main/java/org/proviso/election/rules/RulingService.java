package org.proviso.election.rules;

import jakarta.validation.Valid;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.CountyRuling;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesChanged;
import org.proviso.election.RulesService;
import org.proviso.files.InputException;
import org.proviso.files.packs.RulePacks;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * County rulings: the office's signed word on a value that nobody read or could source, so that a rejection or a count
 * in part may rest on it in this election. One supervisor records it, another puts it in force; open cases are assessed
 * anew in that transaction.
 */
@Service
@Validated
public class RulingService {

    private final RulingStore rulings;
    private final RulesService rules;
    private final ElectionService elections;
    private final AccessService access;
    private final StaffList staff;
    private final ActDoor door;

    RulingService(
            RulingStore rulings,
            RulesService rules,
            ElectionService elections,
            AccessService access,
            StaffList staff,
            ActDoor door) {
        this.staff = staff;
        this.rulings = rulings;
        this.rules = rules;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    /** A ruling with the names of the supervisors who recorded it and put it in force; {@code byYou}: you recorded it. */
    public record NamedRuling(
            RecordedRuling recorded,
            String recordedBy,
            @Nullable String inForceBy,
            boolean byYou) {}

    /** Every ruling recorded in the office, also those that a later one on the same rule replaced. */
    @Transactional(readOnly = true)
    public List<NamedRuling> acts(ElectionId electionId) {
        UserName you = access.demand(Permission.READ_FIGURES).userName();
        Map<UserName, String> names = new HashMap<>();
        return rulings.acts(electionId).stream()
                .map(recorded -> new NamedRuling(
                        recorded,
                        names.computeIfAbsent(recorded.recordedBy(), this::name),
                        recorded.inForceBy() == null ? null : names.computeIfAbsent(recorded.inForceBy(), this::name),
                        recorded.recordedBy().equals(you)))
                .toList();
    }

    private String name(UserName userName) {
        return staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }

    /**
     * The first of two records a ruling as the office signed it, and gives its number; nothing changes yet. Refused
     * where there is no such rule, the value is not one of the rule's, or there is nothing to confirm.
     */
    @Transactional
    public ActResult<Integer> record(@Valid SignRuling command) {
        ActDoor.Permitted supervisor = door.demand(Permission.SIGN_RULINGS);
        ElectionId id = command.electionId();
        return supervisor
                .lockNothing()
                .refuse(any -> elections.closed(id))
                .refuse(any -> unfit(id, command.ruling()))
                .save(user -> rulings.record(id, command.ruling(), user.userName()))
                .record(number -> LedgerLine.of(
                        LedgerChain.of(id),
                        "ruling_recorded",
                        command.ruling().rule(),
                        Map.of("value", command.ruling().value(), "ruling", number)));
    }

    /** Another supervisor puts a recorded ruling in force: cases not settled yet are assessed anew at once. */
    @Transactional
    public ActResult<Integer> putInForce(ElectionId id, int actNo) {
        ActDoor.Permitted second = door.demand(Permission.SIGN_RULINGS);
        ActDoor.Locked<RecordedRuling> locked = second.lock(() -> known(id, actNo));
        CountyRuling ruling = locked.subject().ruling();
        return locked.refuse(any -> elections.closed(id))
                .refuse(RulingService::notWaiting)
                .notBy(recorded -> List.of(recorded.recordedBy()))
                .refuse(any -> unfit(id, ruling))
                .save(recorded -> {
                    ResolvedRule before = before(id, ruling);
                    rulings.putInForce(id, recorded, second.user().userName());
                    rules.keep(id);
                    return before;
                })
                .tell(before -> new RulesChanged(
                        id, "The office ruled on " + before.rule().meaning() + " (" + ruling.rule() + ")."))
                .record(before -> line(id, actNo, ruling, before))
                .map(before -> actNo);
    }

    /** A ruling that waits is taken back: it was a slip, or counsel thought again. */
    @Transactional
    public ActResult<Integer> takeBack(ElectionId id, int actNo) {
        ActDoor.Permitted supervisor = door.demand(Permission.SIGN_RULINGS);
        return supervisor
                .lock(() -> known(id, actNo))
                .refuse(any -> elections.closed(id))
                .refuse(RulingService::notWaiting)
                .save(recorded -> {
                    rulings.takeBack(id, recorded, supervisor.user().userName());
                    return recorded;
                })
                .record(recorded -> LedgerLine.of(
                        LedgerChain.of(id),
                        "ruling_taken_back",
                        recorded.ruling().rule(),
                        Map.of("ruling", actNo)))
                .map(recorded -> actNo);
    }

    private RecordedRuling known(ElectionId id, int actNo) {
        return rulings.locked(id, actNo)
                .orElseThrow(() -> new IllegalArgumentException("There is no ruling " + actNo + "."));
    }

    private static Optional<Refusal> notWaiting(RecordedRuling recorded) {
        return Refusal.when(
                !recorded.isWaiting(),
                Why.NOTHING_NEW,
                recorded.takenBackAt() == null
                        ? "Ruling " + recorded.actNo() + " is in force already."
                        : "Ruling " + recorded.actNo() + " was taken back. Record it again.");
    }

    private ResolvedRule before(ElectionId id, CountyRuling ruling) {
        return rules.book(id).pack().of(Rule.find(ruling.rule()).orElseThrow());
    }

    /** Why a ruling cannot be recorded, or is not to be put in force any more: another pack may be in force by now. */
    private Optional<Refusal> unfit(ElectionId id, CountyRuling ruling) {
        try {
            PackResolver.ParsedRuling ruled = RulePacks.rulings(List.of(ruling)).get(0);
            boolean nothing = ruling.value().isEmpty()
                    && !rules.book(id).pack().of(ruled.rule()).isKnown();
            return nothing
                    ? Optional.of(Refusal.at(
                            "value",
                            Why.NOTHING_NEW,
                            "There is nothing to confirm: the pack does not say "
                                    + ruled.rule().meaning() + "."))
                    : Optional.empty();
        } catch (InputException e) {
            String field = Rule.find(ruling.rule()).isEmpty() ? "rule" : "value";
            return Optional.of(Refusal.at(field, Why.RULES_NOT_READABLE, e.reason()));
        }
    }

    private LedgerLine line(ElectionId id, int actNo, CountyRuling ruling, ResolvedRule before) {
        return LedgerLine.of(
                LedgerChain.of(id),
                "ruling_signed",
                ruling.rule(),
                Map.of(
                        "ruling",
                        actNo,
                        "value",
                        ruling.value(),
                        "before",
                        before.value().spelled(),
                        "before_known_by",
                        before.basis().code(),
                        "signed_on",
                        ruling.on().toString(),
                        "pack_hash",
                        rules.book(id).pack().hash()));
    }
}
