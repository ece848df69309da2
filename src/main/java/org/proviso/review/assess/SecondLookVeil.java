package org.proviso.review.assess;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.proviso.access.LedgerVeil;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.ledger.LedgerChain;
import org.springframework.stereotype.Component;

/** What the ledger withholds from whoever may look a second time at a signature: what the first reviewer found. */
@Component
@BetweenRooms
public class SecondLookVeil implements LedgerVeil {

    private static final Map<String, Object> WITHHELD = Map.of("withheld", "while the case is in review");

    private final SecondLooks looks;

    SecondLookVeil(SecondLooks looks) {
        this.looks = looks;
    }

    /** Pages show that something was answered, and not what. */
    @Override
    public List<LedgerEntry> shown(LedgerChain chain, List<LedgerEntry> entries, OfficeUser reader) {
        Predicate<LedgerEntry> withheld = withheld(chain, reader);
        return entries.stream()
                .map(entry -> withheld.test(entry) ? without(entry) : entry)
                .toList();
    }

    @Override
    public void taken(LedgerChain chain, OfficeUser reader) {
        chain.election().ifPresent(electionId -> looks.allShown(electionId, reader));
    }

    /** The acts on one case, without those that the reader must not know of yet. */
    public List<LedgerEntry> known(EnvelopeKey key, List<LedgerEntry> entries, OfficeUser reader) {
        Predicate<LedgerEntry> withheld = withheld(LedgerChain.of(key.electionId()), reader);
        return entries.stream().filter(withheld.negate()).toList();
    }

    private Predicate<LedgerEntry> withheld(LedgerChain chain, OfficeUser reader) {
        if (chain.election().isEmpty() || !Permission.ANSWER_QUESTIONS.isOpenTo(reader.roles())) {
            return entry -> false;
        }
        ElectionId electionId = chain.election().get();
        Map<String, Boolean> blind = new HashMap<>();
        return entry -> isLook(entry)
                && blind.computeIfAbsent(
                        entry.subject(),
                        subject -> looks.isBlind(new EnvelopeKey(electionId, new EnvelopeNumber(subject)), reader));
    }

    private static boolean isLook(LedgerEntry entry) {
        return entry.act().equals("answer_given")
                && Fact.SIGNATURE_COMPARISON.key().equals(entry.payload().get("fact"));
    }

    private static LedgerEntry without(LedgerEntry entry) {
        return new LedgerEntry(
                entry.sequence(),
                entry.at(),
                entry.actor(),
                entry.act(),
                entry.subject(),
                WITHHELD,
                entry.previousHash(),
                entry.hash());
    }
}
