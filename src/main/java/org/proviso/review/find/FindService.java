package org.proviso.review.find;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ElectionId;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.Voter;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.roll.LookupService;
import org.proviso.roll.aside.UnreadRollRows;
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
                .map(voter -> new FindResult.VoterHit(
                        voter, isByFormerName(sought, voter), store.linkedTo(electionId, voter.voterId())))
                .toList();
        return new FindResult(envelopes(electionId, sought), voters);
    }

    /** Records on the roll that match what was typed. */
    @Transactional(readOnly = true)
    public List<Voter> voters(ElectionId electionId, String typed) {
        demand();
        return voters(electionId, FindQuery.of(typed));
    }

    /** Rows of the roll that could not be read, in which a voter may stand whom no search finds. */
    @Transactional(readOnly = true)
    public UnreadRollRows unread(ElectionId electionId, String typed) {
        demand();
        Optional<LocalDate> born = FindQuery.of(typed).date();
        return lookup.unread(electionId, born.map(LocalDate::toString).orElse(typed));
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
            return each(sought, name -> store.named(electionId, name.last(), name.first(), MOST));
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
        return each(sought, name -> lookup.named(electionId, name.last(), name.first(), MOST));
    }

    /** What is found by any of the names that were meant, the first ones first, nothing twice. */
    private static <T> List<T> each(FindQuery sought, Function<FindQuery.Name, List<T>> find) {
        return sought.names().stream()
                .flatMap(name -> find.apply(name).stream())
                .distinct()
                .limit(MOST)
                .toList();
    }

    /** Whether only the former name of the record is the one that was typed. */
    private static boolean isByFormerName(FindQuery sought, Voter voter) {
        return !sought.hasDigits()
                && sought.names().stream().noneMatch(name -> begins(voter.name().last(), name.last()))
                && sought.names().stream().anyMatch(name -> begins(voter.formerName(), name.last()));
    }

    private static boolean begins(String name, String typed) {
        return NameText.joined(NameText.fold(name)).startsWith(NameText.joined(NameText.fold(typed)));
    }
}
