package org.proviso.roll;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.proviso.core.MailBallot;
import org.proviso.core.adjudication.finding.DateWords;

/** How one voter's mail ballots differ between two lists, ballot by ballot. */
final class BallotDifferences {

    private BallotDifferences() {}

    static List<String> between(List<MailBallot> before, List<MailBallot> after) {
        Map<String, MailBallot> old = bySerial(before);
        Map<String, MailBallot> now = bySerial(after);
        Set<String> serials = new TreeSet<>(old.keySet());
        serials.addAll(now.keySet());
        List<String> words = new ArrayList<>();
        for (String serial : serials) {
            String ballot = serial.isEmpty() ? "mail ballot" : "mail ballot " + serial;
            compare(ballot, old.get(serial), now.get(serial), words);
        }
        return words;
    }

    private static void compare(String ballot, @Nullable MailBallot old, @Nullable MailBallot now, List<String> words) {
        if (old == null && now != null) {
            words.add(ballot + " added: " + state(now));
        } else if (old != null && now == null) {
            words.add(ballot + " no longer listed, was " + state(old));
        } else if (old != null && now != null) {
            changed(ballot, "", state(old), state(now), words);
            changed(ballot, " date", DateWords.date(old.stateOn()), DateWords.date(now.stateOn()), words);
            changed(ballot, " issued", DateWords.date(old.issuedOn()), DateWords.date(now.issuedOn()), words);
        }
    }

    private static void changed(String ballot, String what, String old, String now, List<String> words) {
        if (!old.equals(now)) {
            words.add(ballot + what + ": " + old + " -> " + now);
        }
    }

    private static String state(MailBallot ballot) {
        return DateWords.code(ballot.state().code());
    }

    private static Map<String, MailBallot> bySerial(List<MailBallot> ballots) {
        Map<String, MailBallot> bySerial = new LinkedHashMap<>();
        ballots.forEach(ballot -> bySerial.put(ballot.serial(), ballot));
        return bySerial;
    }
}
