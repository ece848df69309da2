package org.proviso.review.file;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.proviso.access.OfficeUser;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseKey;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who did what on a case and when, from the ledger, for people who may see the case. */
@Service
public class HistoryService {

    private final LedgerService ledger;
    private final ElectionService elections;
    private final AccessService access;

    HistoryService(LedgerService ledger, ElectionService elections, AccessService access) {
        this.ledger = ledger;
        this.elections = elections;
        this.access = access;
    }

    /** Every act on the case, oldest first. A closed account appears by its pseudonym. */
    @Transactional(readOnly = true)
    public List<DoneAct> of(CaseKey key) {
        if (!access.may(Act.PROPOSE)) {
            access.demand(Act.SEE_WHOLE_CASE);
        }
        Map<String, String> names = access.whoMay(Act.READ_FIGURES).stream()
                .collect(Collectors.toMap(user -> user.actor().pseudonym(), OfficeUser::fullName));
        return ledger.about(LedgerChain.of(key.electionId()), key.envelopeNo()).stream()
                .map(entry -> new DoneAct(
                        LocalDateTime.ofInstant(Instant.parse(entry.at()), elections.zone(key.electionId())),
                        names.getOrDefault(entry.actor(), entry.actor()),
                        entry.act()))
                .toList();
    }
}
