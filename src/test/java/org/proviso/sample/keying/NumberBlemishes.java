package org.proviso.sample.keying;

import java.time.LocalDate;
import org.proviso.sample.county.Dice;
import org.proviso.sample.envelope.DraftEnvelope;

/** What happens to birth dates and to the last four digits on envelopes. */
final class NumberBlemishes {

    private static final int[] YEARS = {1, -1, 10, -10, 6, -6};

    private final Dice dice;

    NumberBlemishes(Dice dice) {
        this.dice = dice;
    }

    String birth(DraftEnvelope draft) {
        LocalDate born = LocalDate.parse(draft.get("date_of_birth"));
        return switch (dice.below(5)) {
            case 0 -> empty(draft, "date_of_birth");
            case 1 -> birth(draft, born.plusYears(YEARS[dice.below(YEARS.length)]), "year of birth mistyped");
            case 2 -> dayMisread(draft, born);
            default -> swapped(draft, born);
        };
    }

    private String swapped(DraftEnvelope draft, LocalDate born) {
        if (born.getDayOfMonth() > 12 || born.getDayOfMonth() == born.getMonthValue()) {
            return "";
        }
        LocalDate written = LocalDate.of(born.getYear(), born.getDayOfMonth(), born.getMonthValue());
        return birth(draft, written, "day and month swapped");
    }

    private String dayMisread(DraftEnvelope draft, LocalDate born) {
        int day = Integer.parseInt(KeyingSlips.misreadDigit(Integer.toString(born.getDayOfMonth()), dice));
        boolean possible = day >= 1 && day <= born.lengthOfMonth() && day != born.getDayOfMonth();
        return possible ? birth(draft, born.withDayOfMonth(day), "day of birth misread") : "";
    }

    private String birth(DraftEnvelope draft, LocalDate written, String what) {
        if (written.isAfter(draft.castAt().toLocalDate().minusYears(18))) {
            return "";
        }
        draft.set("date_of_birth", written);
        return what;
    }

    String last4(DraftEnvelope draft) {
        String number = draft.get("id_last4");
        if (number.isEmpty() || dice.chance(0.5)) {
            return empty(draft, "id_last4");
        }
        String written = KeyingSlips.misreadDigit(number, dice);
        draft.set("id_last4", written);
        return written.equals(number) ? "" : "last four digits misread";
    }

    private String empty(DraftEnvelope draft, String field) {
        String state = dice.pick("left_blank", "left_blank", "illegible", "refused");
        draft.empty(field, state);
        return field + " " + state;
    }
}
