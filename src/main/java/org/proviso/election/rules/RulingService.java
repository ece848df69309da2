package org.proviso.election.rules;

import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.CountyRuling;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesChanged;
import org.proviso.election.RulesRefusedException;
import org.proviso.election.RulesService;
import org.proviso.files.InputException;
import org.proviso.files.packs.RulePacks;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
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
    private final LedgerService ledger;
    private final ApplicationEventPublisher rooms;

    RulingService(
            RulingStore rulings,
            RulesService rules,
            ElectionService elections,
            AccessService access,
            LedgerService ledger,
            ApplicationEventPublisher rooms) {
        this.rulings = rulings;
        this.rules = rules;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
        this.rooms = rooms;
    }

    /** Every signing recorded in the office, also those that a later one on the same rule replaced. */
    @Transactional(readOnly = true)
    public List<RecordedRuling> acts(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return rulings.acts(electionId);
    }

    /**
     * Puts a signed ruling in force for the election and gives the number of the act. Throws
     * {@link RulesRefusedException} where there is no such rule, the value is not one of the rule's, or there is
     * nothing to confirm.
     */
    @Transactional
    public int sign(@Valid SignRuling command) {
        OfficeUser supervisor = access.demand(Permission.SIGN_RULINGS);
        ElectionId id = command.electionId();
        if (elections.isClosed(id)) {
            throw new RulesRefusedException("The election is closed.");
        }
        CountyRuling ruling = command.ruling();
        PackResolver.ParsedRuling ruled = read(ruling);
        ResolvedRule before = rules.book(id).pack().of(ruled.rule());
        if (ruled.value() == null && !before.isKnown()) {
            throw new RulesRefusedException("There is nothing to confirm: the pack does not say "
                    + ruled.rule().meaning() + ".");
        }
        int number = rulings.sign(id, ruling, supervisor.userName());
        rules.keep(id);
        rooms.publishEvent(
                new RulesChanged(id, "The office ruled on " + ruled.rule().meaning() + " (" + ruling.rule() + ")."));
        ledger.record(
                LedgerChain.of(id),
                supervisor.actor(),
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
        return number;
    }

    private static PackResolver.ParsedRuling read(CountyRuling ruling) {
        try {
            return RulePacks.rulings(List.of(ruling)).get(0);
        } catch (InputException e) {
            throw new RulesRefusedException(e.reason());
        }
    }
}
