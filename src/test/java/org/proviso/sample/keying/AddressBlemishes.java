package org.proviso.sample.keying;

import java.util.Locale;
import java.util.Map;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.Dwelling;
import org.proviso.sample.envelope.DraftEnvelope;

/** What happens to addresses on envelopes: never another place, only another or a worse spelling of it. */
final class AddressBlemishes {

    private static final Map<String, String> KINDS = Map.of(
            "St",
            "Street",
            "Ave",
            "Av.",
            "Rd",
            "Road",
            "Ln",
            "Lane",
            "Dr",
            "Drive",
            "Ct",
            "Court",
            "Blvd",
            "Boulevard",
            "Trl",
            "Trail",
            "Hwy",
            "Highway",
            "Pl",
            "Place");

    private final Dice dice;

    AddressBlemishes(Dice dice) {
        this.dice = dice;
    }

    String spoil(DraftEnvelope draft) {
        return switch (dice.below(8)) {
            case 0, 1 -> respelled(draft);
            case 2 -> kindLeftOut(draft);
            case 3 -> unitInLine(draft);
            case 4 -> misspelled(draft);
            case 5 -> number(draft);
            case 6 -> city(draft);
            default -> direction(draft);
        };
    }

    private String respelled(DraftEnvelope draft) {
        String line = draft.get("residence_address_line");
        int cut = line.lastIndexOf(' ');
        String kind = KINDS.getOrDefault(line.substring(cut + 1), "");
        if (kind.isEmpty()) {
            return "";
        }
        draft.set(
                "residence_address_line",
                line.substring(0, cut + 1) + (dice.chance(0.3) ? kind.toUpperCase(Locale.ROOT) : kind));
        return "street kind written otherwise";
    }

    private String kindLeftOut(DraftEnvelope draft) {
        String line = draft.get("residence_address_line");
        draft.set("residence_address_line", line.substring(0, line.lastIndexOf(' ')));
        return "street kind left out";
    }

    private String unitInLine(DraftEnvelope draft) {
        String unit = draft.get("unit");
        if (unit.isEmpty()) {
            return "";
        }
        String number = unit.substring(unit.lastIndexOf(' ') + 1);
        String written = dice.pick("#", "Unit ", "No. ", "apt. ") + number;
        draft.set("residence_address_line", draft.get("residence_address_line") + " " + written)
                .set("unit", "");
        return "unit written in the street line";
    }

    private String misspelled(DraftEnvelope draft) {
        String[] words = draft.get("residence_address_line").split(" ");
        int longest = words.length - 2;
        String slip = dice.chance(0.5)
                ? KeyingSlips.mistyped(words[longest], dice)
                : KeyingSlips.misread(words[longest], dice);
        if (slip.equals(words[longest])) {
            return "";
        }
        words[longest] = slip;
        draft.set("residence_address_line", String.join(" ", words));
        return "street misspelled";
    }

    /** A misread house number that still lies in the same stretch, so that the ballot does not change with it. */
    private String number(DraftEnvelope draft) {
        Dwelling home = draft.livesIn;
        String read = KeyingSlips.misreadDigit(Integer.toString(home.number()), dice);
        int number = Integer.parseInt(read);
        boolean same = number >= home.segment().low()
                && number <= home.segment().high()
                && home.segment().parity().holds(number);
        if (!same || number == home.number()) {
            return "";
        }
        draft.set("residence_address_line", number + " " + home.street());
        return "house number misread";
    }

    private String city(DraftEnvelope draft) {
        if (dice.chance(0.5)) {
            draft.set("zip", "");
            return "ZIP left out";
        }
        draft.set("city", dice.chance(0.5) ? "" : KeyingSlips.mistyped(draft.get("city"), dice));
        return "city left out or misspelled";
    }

    private String direction(DraftEnvelope draft) {
        String[] words = draft.get("residence_address_line").split(" ");
        if (words.length < 4 || words[1].length() > 1) {
            return respelled(draft);
        }
        words[1] = words[1] + ".";
        draft.set("residence_address_line", String.join(" ", words));
        return "direction with a period";
    }
}
