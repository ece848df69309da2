package org.proviso.intake.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToIntFunction;
import org.proviso.core.Transmittal;
import org.proviso.intake.RecordedTransmittal;

/** What one voting location sent back by all its transmittals, and how many of its envelopes are here. */
public record LocationReturn(String votingLocation, List<RecordedTransmittal> transmittals, int here) {

    /** Whether the return is in balance. */
    public boolean addsUp() {
        return differences().isEmpty();
    }

    /** What is out of balance, a clause each; empty if nothing is. */
    public List<String> differences() {
        List<String> differences = new ArrayList<>();
        if (transmittals.isEmpty()) {
            differences.add(
                    here == 0
                            ? "sent no transmittal, and no envelope is here yet"
                            : "sent no transmittal; " + envelopes(here) + (here == 1 ? " is" : " are") + " here");
            return differences;
        }
        int logged = sum(Transmittal::issued);
        int returned = sum(Transmittal::returned);
        if (returned != logged) {
            differences.add("sent back " + envelopes(returned) + " and logged " + logged);
        }
        if (returned != here) {
            differences.add("sent back " + envelopes(returned) + "; " + here + (here == 1 ? " is" : " are") + " here");
        }
        transmittals.forEach(recorded -> addOf(differences, recorded.transmittal()));
        return differences;
    }

    /** How much of what a location has to bring is here. */
    public enum Arrival {
        NOTHING_YET,
        PARTLY,
        RETURNED
    }

    /** Returned: its transmittal and at least as many envelopes as it says are here. */
    public Arrival arrival() {
        if (transmittals.isEmpty()) {
            return here == 0 ? Arrival.NOTHING_YET : Arrival.PARTLY;
        }
        return here < sum(Transmittal::returned) ? Arrival.PARTLY : Arrival.RETURNED;
    }

    /** The whole as a sentence: {@code Mill Pond Library sent back 11 envelopes and logged 10.} */
    public String sentence() {
        String said = addsUp()
                ? "sent back " + envelopes(sum(Transmittal::returned)) + ", as many as it logged, and all are here"
                : String.join("; ", differences());
        return (votingLocation.isEmpty() ? "Envelopes without a voting location:" : votingLocation) + " " + said + ".";
    }

    private static void addOf(List<String> differences, Transmittal transmittal) {
        if (transmittal.supplied() != null && transmittal.unused() != null) {
            int scanned = Objects.requireNonNullElse(transmittal.scannedInError(), 0);
            int used = transmittal.issued() + transmittal.spoiled() + transmittal.unused() + scanned;
            if (used != transmittal.supplied()) {
                differences.add("was given " + transmittal.supplied() + " and accounts for " + used + " ("
                        + transmittal.issued() + " issued, " + transmittal.spoiled() + " spoiled, "
                        + transmittal.unused() + " unused" + (scanned == 0 ? "" : ", " + scanned + " scanned in error")
                        + ")");
            }
        }
        if (!transmittal.sealOut().equals(transmittal.sealIn())) {
            differences.add("bag " + transmittal.bag() + " went out with seal " + given(transmittal.sealOut())
                    + " and came back with seal " + given(transmittal.sealIn()));
        }
        if (Objects.requireNonNullElse(transmittal.scannedInError(), 0) > 0) {
            differences.add("scanned " + transmittal.scannedInError() + " in error");
        }
        if (Objects.requireNonNullElse(transmittal.looseBallots(), 0) > 0) {
            differences.add("sent " + transmittal.looseBallots() + " loose ballots");
        }
    }

    private static String given(String seal) {
        return seal.isEmpty() ? "not given" : seal;
    }

    private int sum(ToIntFunction<Transmittal> number) {
        return transmittals.stream()
                .map(RecordedTransmittal::transmittal)
                .mapToInt(number)
                .sum();
    }

    private static String envelopes(int number) {
        return number + (number == 1 ? " envelope" : " envelopes");
    }
}
