package org.proviso.cli.sample;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.proviso.cli.sample.Letters.Point;

/** Draws the signatures on the envelopes, and those on file of the voters behind them and of people like them. */
final class SignatureBook {

    private static final int OLD = 74;

    private final Town town;
    private final Dice dice;
    private final Letters letters = new Letters();
    private final SortedMap<String, byte[]> pictures = new TreeMap<>();

    SignatureBook(Town town, Dice dice) {
        this.town = town;
        this.dice = dice;
    }

    /** PNG pictures by their path in the election folder. */
    SortedMap<String, byte[]> pictures(List<Draft> drafts) {
        for (Draft draft : drafts) {
            if (!draft.get("signature_image").isEmpty()) {
                pictures.put(draft.get("signature_image"), onEnvelope(draft));
            }
            if (draft.onRoll) {
                onFile(draft.person);
                town.namesake(draft.person).ifPresent(this::onFile);
            }
            if (draft.person.kin != null) {
                onFile(draft.person.kin);
            }
        }
        return pictures;
    }

    private byte[] onEnvelope(Draft draft) {
        Person person = draft.person;
        if (draft.get("voter_signed").equals("mark")) {
            return mark();
        }
        boolean another = draft.signature.equals("another_hand");
        Hand own = Hand.of(person.hand);
        Hand hand = another ? own.another(dice) : own;
        String last = draft.get("last_name").equals(person.first) ? person.last : signedLast(draft);
        return draw(hand.signs(person.first, person.middle, last), hand, another ? 0 : shaky(person));
    }

    /** People sign with the surname they now use; a slip of the keying hand does not reach the signature. */
    private static String signedLast(Draft draft) {
        boolean changed = draft.notes.contains("surname changed since registration");
        return changed ? draft.get("last_name") : draft.person.last;
    }

    private void onFile(Person person) {
        if (pictures.containsKey(path(person, 1))) {
            return;
        }
        Hand hand = Hand.of(person.hand);
        int exemplars = dice.chance(0.6) ? 1 : dice.between(2, 3);
        for (int n = 1; n <= exemplars; n++) {
            double shaky = Math.max(0, shaky(person) - 0.15 * n);
            pictures.put(path(person, n), draw(hand.signs(person.first, person.middle, person.last), hand, shaky));
        }
    }

    private static String path(Person person, int number) {
        return "signatures/roll/" + person.voterId() + "-" + number + ".png";
    }

    private double shaky(Person person) {
        int age = person.ageOn(town.plan.date());
        return age < OLD ? 0 : Math.min(1, (age - OLD + 4) / 18.0);
    }

    private byte[] draw(String name, Hand hand, double shaky) {
        Paper paper = new Paper();
        Dice act = new Dice(dice.any());
        paper.write(new Writing(letters, hand, act).sign(name), hand, shaky, act);
        return Png.of(paper);
    }

    private byte[] mark() {
        Paper paper = new Paper();
        Hand hand = Hand.of(dice.any());
        List<Point> down = List.of(new Point(0, 2), new Point(0.9, 1.1), new Point(2, -0.1));
        List<Point> up = List.of(new Point(1.9, 2.1), new Point(1, 0.9), new Point(0.1, 0));
        paper.write(List.of(down, up), hand, 0.6, new Dice(dice.any()));
        return Png.of(paper);
    }
}
