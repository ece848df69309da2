package org.proviso.election.rules;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.CountyRuling;
import org.proviso.core.ElectionId;
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
 * in part may rest on it in this election. Open cases are assessed anew in the transaction that records one.
 */
@Service
@Validated
public class RulingService {

    private final RulingStore rulings;
    private final RulesService rules;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;

    RulingService(
            RulingStore rulings, RulesService rules, ElectionService elections, AccessService access, ActDoor door) {
        this.rulings = rulings;
        this.rules = rules;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    /** Every signing recorded in the office, also those that a later one on the same rule replaced. */
    @Transactional(readOnly = true)
    public List<RecordedRuling> acts(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return rulings.acts(electionId);
    }

    /**
     * Puts a signed ruling in force for the election and gives the number of the act. Refused where there is no such
     * rule, the value is not one of the rule's, or there is nothing to confirm.
     */
    @Transactional
    public ActResult<Integer> sign(@Valid SignRuling command) {
        ActDoor.Permitted supervisor = door.demand(Permission.SIGN_RULINGS);
        Optional<Refusal> closed = elections.closed(command.electionId());
        if (closed.isPresent()) {
            return ActResult.refused(closed.get());
        }
        return read(command.ruling()).then(ruled -> sign(supervisor, command, ruled.rule()));
    }

    private ActResult<Integer> sign(ActDoor.Permitted supervisor, SignRuling command, Rule rule) {
        ElectionId id = command.electionId();
        CountyRuling ruling = command.ruling();
        ResolvedRule before = rules.book(id).pack().of(rule);
        return supervisor
                .lockNothing()
                .refuse(any -> ruling.value().isEmpty() && !before.isKnown()
                        ? Optional.of(Refusal.at(
                                "value",
                                Why.NOTHING_NEW,
                                "There is nothing to confirm: the pack does not say " + rule.meaning() + "."))
                        : Optional.empty())
                .save(user -> {
                    int number = rulings.sign(id, ruling, user.userName());
                    rules.keep(id);
                    return number;
                })
                .tell(number ->
                        new RulesChanged(id, "The office ruled on " + rule.meaning() + " (" + ruling.rule() + ")."))
                .record(number -> line(id, ruling, before));
    }

    private LedgerLine line(ElectionId id, CountyRuling ruling, ResolvedRule before) {
        return LedgerLine.of(
                LedgerChain.of(id),
                "ruling_signed",
                ruling.rule(),
                Map.of(
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

    private static ActResult<PackResolver.ParsedRuling> read(CountyRuling ruling) {
        try {
            return ActResult.accepted(RulePacks.rulings(List.of(ruling)).get(0));
        } catch (InputException e) {
            String field = Rule.find(ruling.rule()).isEmpty() ? "rule" : "value";
            return ActResult.refused(Refusal.at(field, Why.RULES_NOT_READABLE, e.reason()));
        }
    }
}
