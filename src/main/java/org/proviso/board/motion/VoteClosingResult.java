package org.proviso.board.motion;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.board.BoardMotion;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.review.EnvelopeCase;

/** What closing a vote came to. */
public sealed interface VoteClosingResult {

    /** The vote is recorded and with it every envelope put was settled, or opened again: the cases as they are now. */
    record Settled(BoardMotion motion, List<EnvelopeCase> now) implements VoteClosingResult {}

    /** The vote is recorded; the envelopes stay as they are. */
    record StaysOpen(BoardMotion motion) implements VoteClosingResult {}

    /** The vote of one of two bodies is recorded; nothing is settled before the other's on the same is. */
    record WaitsForOtherBody(BoardMotion motion) implements VoteClosingResult {}

    /** Nothing was written, and the votes noted stay: why the vote does not stand, or what forbids which decision. */
    record Refused(List<Refusal> why, Map<EnvelopeKey, List<Refusal>> ofCases) implements VoteClosingResult {

        static Refused because(Refusal refusal) {
            return new Refused(List.of(refusal), Map.of());
        }

        /** All reasons as the person reads them, each case's after its number. */
        public String words() {
            Stream<String> cases = ofCases.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .flatMap(one ->
                            one.getValue().stream().map(refusal -> one.getKey().envelopeNo() + ": " + refusal.words()));
            return Stream.concat(why.stream().map(Refusal::words), cases).collect(Collectors.joining(" "));
        }
    }
}
