package org.proviso.roll;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.VoterLookup;
import org.proviso.roll.aside.UnreadRollRows;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records of the roll in use by the beginning of a name, a birth date, an address or the beginning of a number. */
@Service
public class LookupService {

    private final RollMatches matches;
    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}'\\-]+");
    private static final int MOST_LINES = 10;

    private final RollService roll;
    private final SetAsideStore asides;
    private final AccessService access;

    LookupService(RollMatches matches, RollService roll, SetAsideStore asides, AccessService access) {
        this.asides = asides;
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

    /** Rows of the roll in use that no other look-up finds, as they could not be read, and those with all these words. */
    @Transactional(readOnly = true)
    public UnreadRollRows unread(ElectionId electionId, String typed) {
        demand();
        int inUse = roll.snapshotInUse(electionId, SnapshotKind.ROLL);
        int rows = asides.find(electionId, inUse).rowsAside();
        List<String> words =
                NO_WORD.splitAsStream(typed).filter(word -> word.length() > 1).toList();
        if (rows == 0) {
            return UnreadRollRows.NONE;
        }
        return new UnreadRollRows(
                rows, words.isEmpty() ? List.of() : asides.lines(electionId, inUse, words, MOST_LINES));
    }

    private void demand() {
        if (!access.isPermitted(Permission.SEARCH)) {
            access.demand(Permission.SEE_WHOLE_CASE);
        }
    }

    private List<Voter> voters(ElectionId electionId, Function<VoterLookup, List<VoterId>> look) {
        demand();
        return look.apply(matches.lookup(electionId)).stream()
                .map(id -> roll.voter(electionId, id))
                .flatMap(Optional::stream)
                .toList();
    }
}
