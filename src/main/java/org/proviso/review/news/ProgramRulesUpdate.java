package org.proviso.review.news;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.access.ActDoor;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesService;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Rules that came with a newer version of the program. That they are in force now is itself an act, recorded once; every
 * case that is not decided is assessed again under them, what was assessed before keeps the rules it was made with.
 */
@Service
@BetweenRooms
public class ProgramRulesUpdate {

    private static final List<String> BECAUSE = List.of("The program's rules were updated.");

    private final RulesService rules;
    private final ElectionService elections;
    private final CaseStore cases;
    private final CaseRecheck watch;
    private final ActDoor door;

    ProgramRulesUpdate(
            RulesService rules, ElectionService elections, CaseStore cases, CaseRecheck watch, ActDoor door) {
        this.rules = rules;
        this.elections = elections;
        this.cases = cases;
        this.watch = watch;
        this.door = door;
    }

    /** Looks once after a start; the cases of which the newer rules say something else. A closed election stays as it is. */
    @Transactional
    public List<CaseDifference> takeUpNewRules(ElectionId electionId) {
        if (elections.isClosed(electionId) || rules.areKept(electionId)) {
            return List.of();
        }
        ResolvedPack pack = rules.keep(electionId).pack();
        Map<EnvelopeKey, List<String>> because = new LinkedHashMap<>();
        cases.all(electionId).stream()
                .filter(envelopeCase -> !envelopeCase.state().isOver())
                .forEach(envelopeCase -> because.put(envelopeCase.key(), BECAUSE));
        List<CaseDifference> differences = watch.lookAgain(because.keySet(), Actor.SYSTEM, because);
        door.record(
                Actor.SYSTEM,
                LedgerLine.of(
                        LedgerChain.of(electionId),
                        "rules_updated",
                        pack.pack().id(),
                        Map.of("pack_hash", pack.hash(), "cases_changed", differences.size())));
        return differences;
    }
}
