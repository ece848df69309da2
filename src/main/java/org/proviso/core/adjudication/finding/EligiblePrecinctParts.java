package org.proviso.core.adjudication.finding;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.PrecinctId;
import org.proviso.core.Voter;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;

/**
 * The precinct parts under which this voter may vote, by the pack's rule on moves; several where the rule lets the
 * voter choose or the day of the move is not given. Empty parts mean that nobody can tell yet. Moving within the
 * county is no fault: 52 USC 20507(e)(2).
 */
record EligiblePrecinctParts(Set<PrecinctId> parts, List<Evidence> evidence) {

    /** From where the street file puts the address on the affirmation. */
    static EligiblePrecinctParts findEligible(
            Records records, Envelope envelope, LocatedAddress located, Optional<Voter> voter, DeadlineBook book) {
        if (voter.isEmpty()) {
            return new EligiblePrecinctParts(
                    new LinkedHashSet<>(located.parts()),
                    List.of(Evidence.of(EvidenceSource.STREET_FILE, located.words())));
        }
        return new PartFinder(records, envelope, voter.get(), book, located).find();
    }

    private record PartFinder(
            Records records, Envelope envelope, Voter voter, DeadlineBook book, LocatedAddress located) {

        EligiblePrecinctParts find() {
            PrecinctId rolls = rollPart();
            Address lives = envelope.affirmation().residence();
            if (located.place() == LocatedAddress.Place.NO_ADDRESS) {
                return right(
                        Set.of(rolls),
                        "The affirmation gives no address, so the registered address decides: " + rollAddress() + ", "
                                + rolls.words() + ".");
            }
            if (records.sameAddress(lives, voter.residence().address())
                    || located.parts().contains(rolls)) {
                return right(
                        Set.of(rolls),
                        "Lives at the registered address or in the same precinct part: " + rolls.words() + ".");
            }
            if (located.place() == LocatedAddress.Place.IN_COUNTY_NOT_FOUND
                    && records.differsByASlip(lives, voter.residence().address())) {
                return right(
                        Set.of(rolls),
                        "The street file does not have the address as written. It is one error away from the registered"
                                + " address, which is used instead: " + rolls.words() + ".");
            }
            if (!located.isOnly()) {
                return right(Set.of(), located.words());
            }
            return moved(rolls, located.parts().get(0));
        }

        private EligiblePrecinctParts moved(PrecinctId rolls, PrecinctId now) {
            String words =
                    "Registered at " + rollAddress() + ", " + rolls.words() + "; now lives in " + now.words() + ". ";
            if (!book.pack().of(Rules.MOVES).isFirm()) {
                return right(
                        Set.of(),
                        words
                                + "No source read and no county ruling says which address decides; the office must sign a county ruling.");
            }
            String rule = " (" + book.pack().of(Rules.MOVES).reference().words() + ").";
            return switch (book.pack().word(Rules.MOVES)) {
                case "registered_address" -> right(Set.of(rolls), words + "The registered address decides" + rule);
                case "new_address" -> right(Set.of(now), words + "The new address decides" + rule);
                case "either" -> right(both(rolls, now), words + "Either address may be used" + rule);
                case "by_move_date" -> byDate(rolls, now, words, rule);
                default -> right(Set.of(), words + "No source says which address decides.");
            };
        }

        private EligiblePrecinctParts byDate(PrecinctId rolls, PrecinctId now, String words, String rule) {
            LocalDate moved = envelope.affirmation().movedOn();
            boolean known = book.pack().of(Rules.REGISTER_IN_PERSON).isFirm();
            Optional<LocalDate> deadline =
                    book.of(Rules.REGISTER_IN_PERSON).filter(any -> known).map(Deadline::day);
            if (moved == null || deadline.isEmpty()) {
                return right(
                        both(rolls, now),
                        words
                                + (moved == null
                                        ? "The date of the move is not stated"
                                        : "No source was read for the deadline")
                                + ", so either ballot is accepted" + rule);
            }
            boolean before = !moved.isAfter(deadline.get());
            return right(
                    Set.of(before ? now : rolls),
                    words + "Moved on " + DateWords.date(moved)
                            + (before ? ", on or before" : ", after") + " the registration deadline of "
                            + DateWords.date(deadline.get())
                            + (before ? ": the new address decides" : ": the registered address decides") + rule);
        }

        private PrecinctId rollPart() {
            return new PrecinctId(
                    voter.residence().precinct(), voter.residence().split());
        }

        /** A protected address is never written out. */
        private String rollAddress() {
            return voter.confidential()
                    ? "a protected address"
                    : voter.residence().address().oneLine();
        }

        private static Set<PrecinctId> both(PrecinctId rolls, PrecinctId now) {
            return new LinkedHashSet<>(List.of(rolls, now));
        }

        private EligiblePrecinctParts right(Set<PrecinctId> parts, String words) {
            List<Evidence> evidence = new ArrayList<>();
            evidence.add(Evidence.of(EvidenceSource.STREET_FILE, words));
            return new EligiblePrecinctParts(parts, evidence);
        }
    }
}
