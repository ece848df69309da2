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
            differences.add("sent no transmittal; " + envelopes(here) + (here == 1 ? " is" : " are") + " here");
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
        transmittals.forEach(one -> addOf(differences, one.transmittal()));
        return differences;
    }

    /** The whole as a sentence: {@code Mill Pond Library sent back 11 envelopes and logged 10.} */
    public String sentence() {
        String said = addsUp()
                ? "sent back " + envelopes(sum(Transmittal::returned)) + ", as many as it logged, and all are here"
                : String.join("; ", differences());
        return (votingLocation.isEmpty() ? "Envelopes without a voting location:" : votingLocation) + " " + said + ".";
    }

    private static void addOf(List<String> differences, Transmittal one) {
        if (one.supplied() != null && one.unused() != null) {
            int used = one.issued() + one.spoiled() + one.unused();
            if (used != one.supplied()) {
                differences.add("was given " + one.supplied() + " and accounts for " + used + " (" + one.issued()
                        + " issued, " + one.spoiled() + " spoiled, " + one.unused() + " unused)");
            }
        }
        if (!one.sealOut().equals(one.sealIn())) {
            differences.add("bag " + one.bag() + " went out with seal " + given(one.sealOut())
                    + " and came back with seal " + given(one.sealIn()));
        }
        if (Objects.requireNonNullElse(one.scannedInError(), 0) > 0) {
            differences.add("scanned " + one.scannedInError() + " in error");
        }
        if (Objects.requireNonNullElse(one.looseBallots(), 0) > 0) {
            differences.add("sent " + one.looseBallots() + " loose ballots");
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
