package org.proviso.review.find;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ElectionId;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.Voter;
import org.proviso.roll.LookupService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds envelopes and voters by a number, a birth date, a name or an address, for whoever works on cases. */
@Service
public class FindService {

    /** The most matches shown; beyond that the page asks for more words. */
    public static final int MOST = 25;

    private final FindStore store;
    private final LookupService lookup;
    private final AccessService access;

    FindService(FindStore store, LookupService lookup, AccessService access) {
        this.store = store;
        this.lookup = lookup;
        this.access = access;
    }

    /** Envelopes and voters that match what was typed. */
    @Transactional(readOnly = true)
    public FindResult find(ElectionId electionId, String typed) {
        demand();
        FindQuery sought = FindQuery.of(typed);
        List<FindResult.VoterHit> voters = voters(electionId, sought).stream()
                .map(voter -> new FindResult.VoterHit(voter, store.linkedTo(electionId, voter.voterId())))
                .toList();
        return new FindResult(envelopes(electionId, sought), voters);
    }

    /** Records on the roll that match what was typed. */
    @Transactional(readOnly = true)
    public List<Voter> voters(ElectionId electionId, String typed) {
        demand();
        return voters(electionId, FindQuery.of(typed));
    }

    /** Whether the roll is being loaded, as after startup. Voter look-ups wait until it is done. */
    @Transactional(readOnly = true)
    public boolean isReadingRoll() {
        demand();
        return lookup.isReading();
    }

    private void demand() {
        if (!access.isPermitted(Permission.SEARCH)) {
            access.demand(Permission.SEE_WHOLE_CASE);
        }
    }

    private List<FindResult.EnvelopeHit> envelopes(ElectionId electionId, FindQuery sought) {
        if (sought.date().isPresent()) {
            return store.born(electionId, sought.date().get(), MOST);
        }
        if (!sought.hasDigits()) {
            return sought.last().length() < 2
                    ? List.of()
                    : store.named(electionId, sought.last(), sought.first(), MOST);
        }
        Set<FindResult.EnvelopeHit> found = new LinkedHashSet<>(store.numbered(electionId, sought.numbers()));
        String receipt = sought.typed().toUpperCase(Locale.ROOT);
        ReceiptNumber.find(receipt).ifPresent(number -> found.addAll(store.receipt(electionId, number)));
        CheckedReceipt.find(receipt).ifPresent(number -> found.addAll(store.receipt(electionId, number)));
        return List.copyOf(found);
    }

    private List<Voter> voters(ElectionId electionId, FindQuery sought) {
        if (sought.date().isPresent()) {
            return lookup.born(electionId, sought.date().get(), MOST);
        }
        if (sought.hasDigits()) {
            return sought.isAddress()
                    ? lookup.at(electionId, sought.typed(), MOST)
                    : lookup.numbered(electionId, sought.typed(), MOST);
        }
        return sought.last().length() < 2
                ? new ArrayList<>()
                : lookup.named(electionId, sought.last(), sought.first(), MOST);
    }
}
