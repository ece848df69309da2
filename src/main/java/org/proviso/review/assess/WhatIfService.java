package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.WhatIf;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.RulesService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What other rules would change in an election's cases; nothing is written. */
@Service
public class WhatIfService {

    private final CurrentCaseReports reports;
    private final RulesService rules;
    private final AccessService access;

    WhatIfService(CurrentCaseReports reports, RulesService rules, AccessService access) {
        this.reports = reports;
        this.rules = rules;
        this.access = access;
    }

    /** What was compared: how many cases, and those that come out otherwise. */
    public record WhatIfResult(int cases, List<WhatIf> differences) {}

    /**
     * The cases under the rules in force and under another pack (empty for the one in force) with values changed, by
     * rule. Refused where a pack or a value is none.
     */
    @Transactional(readOnly = true)
    public ActResult<WhatIfResult> compare(ElectionId electionId, String pack, Map<String, String> changed) {
        access.demand(Permission.PUT_RULES_IN_FORCE);
        return rules.withChangedRules(electionId, pack, changed).map(book -> compare(electionId, book));
    }

    /** The same under rules at hand. */
    @Transactional(readOnly = true)
    public WhatIfResult compare(ElectionId electionId, DeadlineBook other) {
        access.demand(Permission.PUT_RULES_IN_FORCE);
        LocalDateTime asOf = reports.now(electionId);
        Map<EnvelopeKey, CaseReport> before = reports.all(electionId, reports.book(electionId), asOf);
        Map<EnvelopeKey, CaseReport> after = reports.all(electionId, other, asOf);
        List<WhatIf> differences = new ArrayList<>();
        before.forEach((key, report) -> WhatIf.between(
                        report, Objects.requireNonNull(after.get(key), "the same cases stand under both rules"))
                .ifPresent(differences::add));
        return new WhatIfResult(before.size(), differences);
    }
}
