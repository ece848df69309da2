package org.proviso.review.queue;

import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.proviso.access.OfficeUser;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Counts the cases of an election for people who may read figures. */
@Service
public class TallyService {

    private final TallyStore tallies;
    private final AccessService access;

    TallyService(TallyStore tallies, AccessService access) {
        this.tallies = tallies;
        this.access = access;
    }

    @Transactional(readOnly = true)
    public Tally of(String electionId) {
        OfficeUser reader = access.demand(Act.READ_FIGURES);
        return new Tally(
                tallies.states(electionId),
                tallies.decided(electionId),
                tallies.with(electionId, reader.userName()),
                tallies.proposedByOthers(electionId, reader.userName()));
    }
}
