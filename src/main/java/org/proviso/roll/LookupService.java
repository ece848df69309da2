package org.proviso.roll;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.VoterLookup;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records of the roll in use by the beginning of a name, a birth date, an address or the beginning of a number. */
@Service
public class LookupService {

    private final RollMatches matches;
    private final RollService roll;
    private final AccessService access;

    LookupService(RollMatches matches, RollService roll, AccessService access) {
        this.matches = matches;
        this.roll = roll;
        this.access = access;
    }

    /** Whether a roll is being read just now: until it is, a look-up waits. It is told to whoever works here. */
    public boolean isReading() {
        return matches.isReading() && access.isPermitted(Permission.READ_FIGURES);
    }

    @Transactional(readOnly = true)
    public List<Voter> named(ElectionId electionId, String last, String first, int most) {
        return voters(electionId, lookup -> lookup.named(last, first, most));
    }

    @Transactional(readOnly = true)
    public List<Voter> born(ElectionId electionId, LocalDate on, int most) {
        return voters(electionId, lookup -> lookup.born(on, most));
    }

    @Transactional(readOnly = true)
    public List<Voter> at(ElectionId electionId, String address, int most) {
        return voters(electionId, lookup -> lookup.at(address, most));
    }

    @Transactional(readOnly = true)
    public List<Voter> numbered(ElectionId electionId, String beginning, int most) {
        return voters(electionId, lookup -> lookup.numbered(beginning, most));
    }

    private List<Voter> voters(ElectionId electionId, Function<VoterLookup, List<VoterId>> look) {
        if (!access.isPermitted(Permission.SEARCH)) {
            access.demand(Permission.SEE_WHOLE_CASE);
        }
        return look.apply(matches.lookup(electionId)).stream()
                .map(id -> roll.voter(electionId, id))
                .flatMap(Optional::stream)
                .toList();
    }
}
