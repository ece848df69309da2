package org.proviso.review.file;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.EnvelopeKey;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.assess.SecondLookVeil;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who did what on a case and when, from the ledger, for people who may see the case. */
@Service
public class HistoryService {

    private final LedgerService ledger;
    private final ElectionService elections;
    private final SecondLookVeil veil;
    private final AccessService access;
    private final StaffList staff;

    HistoryService(
            LedgerService ledger,
            ElectionService elections,
            SecondLookVeil veil,
            AccessService access,
            StaffList staff) {
        this.ledger = ledger;
        this.elections = elections;
        this.veil = veil;
        this.access = access;
        this.staff = staff;
    }

    /** Every act on the case, oldest first. A closed account appears by its pseudonym. */
    @Transactional(readOnly = true)
    public List<HistoryEntry> of(EnvelopeKey key) {
        OfficeUser reader =
                access.isPermitted(Permission.PROPOSE) ? access.signedIn() : access.demand(Permission.SEE_WHOLE_CASE);
        Map<String, String> names = staff.usersWith(Permission.READ_FIGURES).stream()
                .collect(Collectors.toMap(user -> user.actor().pseudonym(), OfficeUser::fullName));
        ZoneId county = elections.zone(key.electionId());
        return veil.known(key, ledger.about(LedgerChain.of(key.electionId()), key.envelopeNo()), reader).stream()
                .map(entry -> new HistoryEntry(
                        LocalDateTime.ofInstant(Instant.parse(entry.at()), county),
                        names.getOrDefault(entry.actor(), entry.actor()),
                        entry.act()))
                .toList();
    }
}
