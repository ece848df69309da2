package org.proviso.election.rules;

import jakarta.validation.Valid;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.proof.PackProof;
import org.proviso.core.adjudication.proof.ProofReport;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.RulePack;
import org.proviso.election.ElectionService;
import org.proviso.election.RuleChange;
import org.proviso.election.RuleChangeStore;
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
 * Puts a rule pack of the office's own in force. It is proved first, and one that breaks a promise is refused, unless
 * counsel's override is recorded with the counterexample. Cases decided before keep the rules they were decided under.
 */
@Service
@Validated
public class RuleChangeService {

    private final RuleChangeStore changes;
    private final RulesService rules;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;
    private final Clock clock;

    RuleChangeService(
            RuleChangeStore changes,
            RulesService rules,
            ElectionService elections,
            AccessService access,
            ActDoor door,
            Clock clock) {
        this.changes = changes;
        this.rules = rules;
        this.elections = elections;
        this.access = access;
        this.door = door;
        this.clock = clock;
    }

    /** A pack that could be put in force: what the proof says of it, and the rules as they would be. */
    public record PackTrial(RulePack pack, ProofReport proof, DeadlineBook book) {}

    /** Reads and proves a pack; nothing is changed. A pack that cannot be read is refused with file, line and key. */
    @Transactional(readOnly = true)
    public ActResult<PackTrial> tryOut(ElectionId electionId, String content) {
        access.demand(Permission.PUT_RULES_IN_FORCE);
        return trial(electionId, content);
    }

    private ActResult<PackTrial> trial(ElectionId electionId, String content) {
        return read(content).map(pack -> {
            DeadlineBook book = rules.deadlinesUnder(electionId, pack);
            return new PackTrial(
                    pack, PackProof.proveForElection(pack, book.pack().electionDate()), book);
        });
    }

    /** The packs put in force, in their order. */
    @Transactional(readOnly = true)
    public List<RuleChange> changes(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return changes.all(electionId);
    }

    /** Puts a pack in force. */
    @Transactional
    public ActResult<RuleChange> putInForce(@Valid PutRulesInForce command) {
        ActDoor.Permitted supervisor = door.demand(Permission.PUT_RULES_IN_FORCE);
        Optional<Refusal> closed = elections.closed(command.electionId());
        if (closed.isPresent()) {
            return ActResult.refused(closed.get());
        }
        return trial(command.electionId(), command.content()).then(tried -> put(supervisor, command, tried));
    }

    private ActResult<RuleChange> put(ActDoor.Permitted supervisor, PutRulesInForce command, PackTrial tried) {
        ElectionId id = command.electionId();
        return supervisor
                .lock(() -> change(command, tried, supervisor.user()))
                .refuse(change -> Refusal.when(
                        !tried.proof().holds() && !command.isOverride(),
                        Why.RULES_BREAK_A_PROMISE,
                        "The pack breaks a promise and was refused. " + change.counterexample()))
                .refuse(change -> Refusal.when(
                        change.hashBefore().equals(change.packHash()),
                        Why.NOTHING_NEW,
                        "These are the rules in force already."))
                .save(change -> {
                    changes.insert(id, change, command.content());
                    rules.keep(id);
                    return change;
                })
                .tell(change -> new RulesChanged(
                        id,
                        "Another rule pack was put in force: " + tried.pack().name() + "."))
                .record(change -> LedgerLine.of(
                        LedgerChain.of(id), "rules_put_in_force", "rules-" + change.changeNo(), told(change)));
    }

    private RuleChange change(PutRulesInForce command, PackTrial tried, OfficeUser supervisor) {
        boolean holds = tried.proof().holds();
        return new RuleChange(
                changes.next(command.electionId()),
                tried.pack().id(),
                tried.book().pack().hash(),
                rules.book(command.electionId()).pack().hash(),
                holds ? "proved" : "overridden",
                counterexample(tried.proof()),
                holds ? "" : command.counsel(),
                holds ? "" : command.ground(),
                supervisor.userName().value(),
                clock.instant());
    }

    /** What an observer may read; counsel's words stay in the office. */
    private static Map<String, Object> told(RuleChange change) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("pack", change.packId());
        payload.put("pack_hash", change.packHash());
        payload.put("hash_before", change.hashBefore());
        payload.put("accepted_because", change.acceptedBecause());
        payload.put("counterexample", change.counterexample());
        return payload;
    }

    private static String counterexample(ProofReport proof) {
        return proof.violations().stream()
                .map(violation -> violation.promise() + " But " + violation.counterexample() + ".")
                .collect(Collectors.joining("\n"));
    }

    private static ActResult<RulePack> read(String content) {
        try {
            return ActResult.accepted(RulePacks.read("the uploaded pack", content));
        } catch (InputException e) {
            return ActResult.refused(Refusal.at("content", Why.RULES_NOT_READABLE, String.valueOf(e.getMessage())));
        }
    }
}
