package org.proviso.review.counts;

import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Counts the cases of an election for people who may read figures. */
@Service
public class CaseCountsService {

    private final CaseCountsStore tallies;
    private final AccessService access;

    CaseCountsService(CaseCountsStore tallies, AccessService access) {
        this.tallies = tallies;
        this.access = access;
    }

    @Transactional(readOnly = true)
    public CaseCounts of(ElectionId electionId) {
        OfficeUser reader = access.demand(Permission.READ_FIGURES);
        return new CaseCounts(
                tallies.states(electionId),
                tallies.decided(electionId),
                tallies.with(electionId, reader.userName()),
                tallies.proposedByOthers(electionId, reader.userName()));
    }
}
