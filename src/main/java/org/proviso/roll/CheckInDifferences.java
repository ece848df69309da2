package org.proviso.roll;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckIn;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.finding.DateWords;

/** How one voter's check-ins differ between two lists; one of the same place, moment and kind is the same check-in. */
final class CheckInDifferences {

    private CheckInDifferences() {}

    static List<String> between(List<CheckIn> before, List<CheckIn> after) {
        List<CheckIn> old = new ArrayList<>(before);
        List<CheckIn> now = new ArrayList<>();
        after.forEach(checkIn -> {
            if (!old.remove(checkIn)) {
                now.add(checkIn);
            }
        });
        List<String> words = new ArrayList<>();
        for (CheckIn checkIn : now) {
            compare(takeSame(old, checkIn), checkIn, words);
        }
        old.forEach(gone -> words.add("check-in removed: " + where(gone)));
        return words;
    }

    private static @Nullable CheckIn takeSame(List<CheckIn> old, CheckIn sought) {
        for (Iterator<CheckIn> each = old.iterator(); each.hasNext(); ) {
            CheckIn checkIn = each.next();
            if (checkIn.at().equals(sought.at())
                    && checkIn.votingLocation().equals(sought.votingLocation())
                    && checkIn.kind() == sought.kind()) {
                each.remove();
                return checkIn;
            }
        }
        return null;
    }

    private static void compare(@Nullable CheckIn old, CheckIn now, List<String> words) {
        if (old == null) {
            words.add("check-in added: " + where(now)
                    + (now.cancelledAt() == null ? "" : ", cancelled at " + DateWords.moment(now.cancelledAt())));
            return;
        }
        if (old.ballotIssued() != now.ballotIssued()) {
            words.add("check-in " + where(now) + ": ballot issued " + word(old.ballotIssued()) + " -> "
                    + word(now.ballotIssued()));
        }
        if (!DateWords.moment(old.cancelledAt()).equals(DateWords.moment(now.cancelledAt()))) {
            words.add("check-in " + where(now) + ": cancelled " + DateWords.moment(old.cancelledAt()) + " -> "
                    + DateWords.moment(now.cancelledAt()));
        }
    }

    private static String where(CheckIn checkIn) {
        String kind = checkIn.kind() == CheckIn.Kind.PROVISIONAL ? ", provisional" : "";
        return checkIn.votingLocation() + ", " + DateWords.moment(checkIn.at()) + kind;
    }

    private static String word(YesNo answer) {
        return switch (answer) {
            case YES -> "yes";
            case NO -> "no";
            case UNKNOWN -> "not stated";
        };
    }
}
