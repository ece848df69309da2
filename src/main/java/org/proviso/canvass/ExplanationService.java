package org.proviso.canvass;

import jakarta.validation.Valid;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Explanations of totals that cannot agree (a lost envelope, a changed seal, a ballot scanned in error): one supervisor
 * writes, another signs. From then on the total counts as explained, as long as it is off by the same number (common
 * practice of the trade: explain every difference). Votes that nobody decided are never explained away.
 */
@Service
@Validated
public class ExplanationService {

    private final ExplanationStore explanations;
    private final ClosingChecks checks;
    private final ElectionService elections;
    private final AccessService access;
    private final StaffList staff;
    private final ActDoor door;

    ExplanationService(
            ExplanationStore explanations,
            ClosingChecks checks,
            ElectionService elections,
            AccessService access,
            StaffList staff,
            ActDoor door) {
        this.explanations = explanations;
        this.checks = checks;
        this.elections = elections;
        this.access = access;
        this.staff = staff;
        this.door = door;
    }

    /** An explanation with the names of the people who wrote and signed it; no signer while it waits for one. */
    public record Signed(
            BalanceExplanation explanation,
            String writer,
            @Nullable String signer,
            boolean byYou) {}

    /** Every explanation that was not taken back, signed by two or waiting for the second, in their order. */
    @Transactional(readOnly = true)
    public List<Signed> standing(ElectionId electionId) {
        UserName you = access.demand(Permission.READ_FIGURES).userName();
        Map<UserName, String> names = new HashMap<>();
        return explanations.standing(electionId).stream()
                .map(explanation -> new Signed(
                        explanation,
                        names.computeIfAbsent(explanation.writtenBy(), this::name),
                        explanation.signedBy() == null
                                ? null
                                : names.computeIfAbsent(explanation.signedBy(), this::name),
                        explanation.writtenBy().equals(you)))
                .toList();
    }

    private String name(UserName userName) {
        return staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }

    /** The first of two says why a total cannot agree. What is new is the number of the explanation. */
    @Transactional
    public ActResult<Integer> explain(@Valid ExplainBalance asked) {
        ActDoor.Permitted first = door.demand(Permission.CLOSE_ELECTION);
        return first.lockNothing()
                .refuse(user -> elections.closed(asked.electionId()))
                .refuse(user -> Refusal.when(
                        !asked.identity().mayBeExplained(),
                        Why.OUT_OF_BALANCE,
                        "No explanation can take the place of this total. It has to be put right."))
                .refuse(user -> asked.because().isBlank()
                        ? Optional.of(Refusal.at("because", Why.NO_REASON, "Required. Enter what happened."))
                        : Optional.empty())
                .refuse(user -> standsAsSeen(asked))
                .refuse(user -> alreadyExplained(asked))
                .save(user -> explanations.insert(asked, user.userName()))
                .record(number -> line(asked, number, "difference_explained"));
    }

    /** Another supervisor signs it, if the total still is off as it was when it was written. */
    @Transactional
    public ActResult<BalanceExplanation> sign(ElectionId electionId, int number, int version) {
        ActDoor.Permitted second = door.demand(Permission.CLOSE_ELECTION);
        return second.lock(() -> read(electionId, number, version))
                .refuse(explanation -> elections.closed(electionId))
                .refuse(explanation -> Refusal.when(
                        explanation.isSigned(), Why.NOTHING_NEW, "Two people have signed this explanation already."))
                .notBy(explanation -> List.of(explanation.writtenBy()))
                .refuse(this::standsAsWritten)
                .save(explanation -> {
                    explanations.sign(explanation, second.user().userName());
                    return explanation;
                })
                .record(signed -> line(signed, "explanation_signed"));
    }

    /** It explains nothing any more: it was wrong, or the total is put right. Either of the two, or any supervisor. */
    @Transactional
    public ActResult<BalanceExplanation> takeBack(ElectionId electionId, int number, int version) {
        ActDoor.Permitted supervisor = door.demand(Permission.CLOSE_ELECTION);
        return supervisor
                .lock(() -> read(electionId, number, version))
                .refuse(explanation -> elections.closed(electionId))
                .save(explanation -> {
                    explanations.takeBack(explanation, supervisor.user().userName());
                    return explanation;
                })
                .record(back -> line(back, "explanation_taken_back"));
    }

    private BalanceExplanation read(ElectionId electionId, int number, int version) {
        return explanations.standing(electionId).stream()
                .filter(explanation -> explanation.number() == number && explanation.version() == version)
                .findFirst()
                .orElseThrow(() -> new OptimisticLockingFailureException(
                        "Somebody signed this explanation or took it back in the meantime. Load the page again."));
    }

    private Optional<Refusal> standsAsSeen(ExplainBalance asked) {
        return checks.all(asked.electionId()).stream().anyMatch(asked::isAbout)
                ? Optional.empty()
                : Optional.of(changed());
    }

    private Optional<Refusal> standsAsWritten(BalanceExplanation explanation) {
        return checks.all(explanation.electionId()).stream().anyMatch(explanation::isAbout)
                ? Optional.empty()
                : Optional.of(changed());
    }

    private static Refusal changed() {
        return Refusal.of(
                Why.NOT_IN_THIS_STATE,
                "The numbers of this total changed in the meantime. Read it again: it may need another explanation, or"
                        + " none.");
    }

    private Optional<Refusal> alreadyExplained(ExplainBalance asked) {
        return Refusal.when(
                explanations.standing(asked.electionId()).stream()
                        .anyMatch(other -> other.where().equals(asked.where())
                                && other.identity() == asked.identity()
                                && Objects.equals(other.difference(), asked.difference())),
                Why.NOTHING_NEW,
                "This difference has an explanation already. Take it back before you write another.");
    }

    private static LedgerLine line(ExplainBalance asked, int number, String act) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("explanation", number);
        payload.put("identity", asked.identity().code());
        payload.put("hours", asked.where().hours().code());
        if (asked.difference() != null) {
            payload.put("difference", asked.difference());
        }
        payload.put("because", Sha256.of(asked.because()));
        return LedgerLine.of(
                LedgerChain.of(asked.electionId()), act, asked.where().name(), payload);
    }

    private static LedgerLine line(BalanceExplanation explanation, String act) {
        return LedgerLine.of(
                LedgerChain.of(explanation.electionId()),
                act,
                explanation.where().name(),
                Map.of("explanation", explanation.number()));
    }
}
