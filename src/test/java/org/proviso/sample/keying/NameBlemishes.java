package org.proviso.sample.keying;

import java.text.Normalizer;
import java.util.List;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.NameBook;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;

/** What happens to names on envelopes; each method says what it did, or nothing where it could not be done. */
final class NameBlemishes {

    private final NameBook names;
    private final Dice dice;

    NameBlemishes(NameBook names, Dice dice) {
        this.names = names;
        this.dice = dice;
    }

    String spoil(DraftEnvelope draft) {
        return switch (dice.below(12)) {
            case 0, 1 -> slip(draft, "last_name");
            case 2 -> slip(draft, "first_name");
            case 3, 4 -> nickname(draft);
            case 5 -> initial(draft);
            case 6 -> swapped(draft);
            case 7, 8 -> married(draft);
            case 9 -> half(draft);
            default -> middle(draft);
        };
    }

    private String slip(DraftEnvelope draft, String column) {
        String was = draft.get(column);
        String plain = Normalizer.normalize(was, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        String now = !plain.equals(was)
                ? plain
                : dice.chance(0.5) ? KeyingSlips.misread(was, dice) : KeyingSlips.mistyped(was, dice);
        draft.set(column, now);
        return now.equals(was) ? "" : column + " misspelled";
    }

    private String nickname(DraftEnvelope draft) {
        List<String> forms = names.shortForms(draft.get("first_name"));
        if (forms.isEmpty()) {
            return "";
        }
        draft.set("first_name", dice.pick(forms));
        return "short form of the first name";
    }

    private String initial(DraftEnvelope draft) {
        draft.set("first_name", draft.get("first_name").substring(0, 1));
        return "initial only";
    }

    private String swapped(DraftEnvelope draft) {
        String last = draft.get("last_name");
        draft.set("last_name", draft.get("first_name")).set("first_name", last);
        return "first and last name swapped";
    }

    /** A new surname since the registration; the former one is given now and then. */
    private String married(DraftEnvelope draft) {
        Resident person = draft.person;
        if (!draft.onRoll || !person.woman || person.born.getYear() < 1970) {
            return "";
        }
        String now = names.surname(dice);
        draft.set("last_name", dice.chance(0.25) ? person.last + "-" + now : now);
        if (dice.chance(0.5)) {
            draft.set("former_name", person.last);
        }
        return "surname changed since registration";
    }

    private String half(DraftEnvelope draft) {
        String[] halves = draft.get("last_name").split("-");
        if (halves.length < 2) {
            return "";
        }
        draft.set("last_name", dice.chance(0.4) ? halves[0] + " " + halves[1] : dice.pick(halves));
        return "hyphenated name written otherwise";
    }

    private String middle(DraftEnvelope draft) {
        String middle = draft.get("middle_name");
        if (middle.isEmpty()) {
            return "";
        }
        draft.set("middle_name", middle.length() > 1 && dice.chance(0.3) ? middle.substring(0, 1) : "");
        return "middle name left out or cut";
    }
}
