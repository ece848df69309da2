package org.proviso.election.rules;

import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.RulesService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The rules in force for an election, for everybody who works in the office or observes it. */
@Service
public class RulesInForceService {

    private final RulesService rules;
    private final AccessService access;

    RulesInForceService(RulesService rules, AccessService access) {
        this.rules = rules;
        this.access = access;
    }

    /** The rules with the county's rulings, and the deadlines that follow from them. */
    @Transactional(readOnly = true)
    public DeadlineBook book(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return rules.book(electionId);
    }
}
