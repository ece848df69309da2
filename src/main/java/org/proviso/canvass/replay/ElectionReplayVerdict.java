package org.proviso.canvass.replay;

import java.util.ArrayList;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.ledger.LedgerVerdict;
import org.proviso.ledger.TableComparison;

/** The verdict on one election: whether its chain holds, and what comparing each room's tables with it found. */
public record ElectionReplayVerdict(ElectionId electionId, LedgerVerdict chain, List<TableComparison> compared) {

    /** Whether the chain holds and nothing differs. */
    public boolean isWhole() {
        return chain.isWhole() && compared.stream().allMatch(TableComparison::isWhole);
    }

    /** Every finding in a sentence, the first twenty of them; empty where all agrees. */
    public List<String> differences() {
        List<String> sentences = new ArrayList<>();
        chain.fault()
                .ifPresent(fault ->
                        sentences.add("The ledger does not hold: " + fault + ". No table was compared with it."));
        compared.forEach(comparison -> sentences.addAll(comparison.first()));
        return List.copyOf(sentences.subList(0, Math.min(DifferenceCounter.NAMED, sentences.size())));
    }

    /** How many differences there are. */
    public long differing() {
        return compared.stream().mapToLong(TableComparison::differing).sum() + (chain.isWhole() ? 0 : 1);
    }

    /** What was looked at, a line each. */
    public List<String> looked() {
        List<String> lines = new ArrayList<>();
        lines.add(chain.entries() + " entries of the ledger fit, head " + chain.headHash());
        compared.forEach(comparison -> lines.add(
                comparison.things() + " " + comparison.what() + ", " + comparison.differing() + " differences"));
        return List.copyOf(lines);
    }
}
