package org.proviso.canvass;

import java.util.ArrayList;
import java.util.List;
import org.proviso.ledger.Compared;
import org.proviso.ledger.Differences;
import org.proviso.ledger.LedgerVerdict;

/** The verdict on one election: whether its chain holds, and what comparing each room's tables with it found. */
public record OfficeReplay(String electionId, LedgerVerdict chain, List<Compared> compared) {

    /** Whether the chain holds and nothing differs. */
    public boolean isWhole() {
        return chain.isWhole() && compared.stream().allMatch(Compared::isWhole);
    }

    /** Every finding in a sentence, the first twenty of them; empty where all agrees. */
    public List<String> differences() {
        List<String> sentences = new ArrayList<>();
        chain.fault()
                .ifPresent(fault ->
                        sentences.add("The ledger does not hold: " + fault + ". No table was compared with it."));
        compared.forEach(one -> sentences.addAll(one.first()));
        return List.copyOf(sentences.subList(0, Math.min(Differences.NAMED, sentences.size())));
    }

    /** How many differences there are. */
    public long differing() {
        return compared.stream().mapToLong(Compared::differing).sum() + (chain.isWhole() ? 0 : 1);
    }

    /** What was looked at, a line each. */
    public List<String> looked() {
        List<String> lines = new ArrayList<>();
        lines.add(chain.entries() + " entries of the ledger fit, head " + chain.headHash());
        compared.forEach(one -> lines.add(one.things() + " " + one.what() + ", " + one.differing() + " differences"));
        return List.copyOf(lines);
    }
}
