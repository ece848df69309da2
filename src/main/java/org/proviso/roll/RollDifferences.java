package org.proviso.roll;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.Voter;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.finding.DateWords;

/** How two records of one voter differ, field by field; a protected address is reported as different but never shown. */
final class RollDifferences {

    private final List<String> words = new ArrayList<>();

    private RollDifferences() {}

    static List<String> between(@Nullable Voter before, @Nullable Voter after) {
        if (before == null) {
            return after == null ? List.of() : List.of("added to the roll, status " + status(after));
        }
        if (after == null) {
            return List.of("no longer on the roll, status was " + status(before));
        }
        RollDifferences differences = new RollDifferences();
        differences.registration(before.registration(), after.registration());
        differences.person(before, after);
        differences.home(before, after);
        differences.rest(before, after);
        return differences.words;
    }

    private void registration(Voter.Registration old, Voter.Registration now) {
        code("status", old.status(), now.status());
        text("status reason", old.statusReason(), now.statusReason());
        date("status date", old.statusOn(), now.statusOn());
        date("registration date", old.registeredOn(), now.registeredOn());
        code("registration channel", old.channel(), now.channel());
        date("registration received", old.receivedOn(), now.receivedOn());
        date("confirmation sent", old.confirmationSentOn(), now.confirmationSentOn());
        code("entitlement", old.entitlement(), now.entitlement());
    }

    private void person(Voter old, Voter now) {
        text("name", old.name().listed(), now.name().listed());
        text("former name", old.formerName(), now.formerName());
        date("date of birth", old.birthDate(), now.birthDate());
        text("last 4 of SSN", old.idLast4(), now.idLast4());
        text("driver's license", old.driversLicense(), now.driversLicense());
    }

    private void home(Voter old, Voter now) {
        boolean hidden = old.confidential() || now.confidential();
        String before = old.residence().address().oneLine();
        String after = now.residence().address().oneLine();
        if (!hidden) {
            text("address", before, after);
            text("mailing address", old.mailAddress(), now.mailAddress());
        } else if (!before.equals(after) || !old.mailAddress().equals(now.mailAddress())) {
            words.add("protected address changed");
        }
        text("precinct", old.residence().precinct(), now.residence().precinct());
        text("precinct split", old.residence().split(), now.residence().split());
        text("address protected", old.confidential() ? "yes" : "no", now.confidential() ? "yes" : "no");
    }

    private void rest(Voter old, Voter now) {
        text("party", old.party(), now.party());
        date("party affiliation date", old.partySince(), now.partySince());
        text("ID required", word(old.idRequired()), word(now.idRequired()));
        text("ID number verified", word(old.numberMatched()), word(now.numberMatched()));
        date("last voted", old.lastVotedOn(), now.lastVotedOn());
        text("language", old.language(), now.language());
    }

    private void text(String field, String old, String now) {
        if (!old.equals(now)) {
            words.add(field + " " + given(old) + " -> " + given(now));
        }
    }

    private void date(String field, @Nullable LocalDate old, @Nullable LocalDate now) {
        text(field, DateWords.date(old), DateWords.date(now));
    }

    private void code(String field, @Nullable Code old, @Nullable Code now) {
        text(field, old == null ? "" : DateWords.code(old.code()), now == null ? "" : DateWords.code(now.code()));
    }

    private static String status(Voter voter) {
        return DateWords.code(voter.registration().status().code());
    }

    private static String given(String text) {
        return text.isEmpty() ? "not stated" : text;
    }

    private static String word(YesNo answer) {
        return answer == YesNo.UNKNOWN ? "" : answer.name().toLowerCase(Locale.ROOT);
    }
}
