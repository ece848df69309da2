package org.proviso.sample.signature;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.proviso.sample.county.County;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.signature.LetterShapes.Point;

/** Draws the signatures on the envelopes, and those on file of the voters behind them and of people like them. */
public final class SignatureBook {

    private static final int OLD = 74;

    private final County county;
    private final Dice dice;
    private final LetterShapes letters = new LetterShapes();
    private final SortedMap<String, byte[]> pictures = new TreeMap<>();

    public SignatureBook(County county, Dice dice) {
        this.county = county;
        this.dice = dice;
    }

    /** PNG pictures by their path in the election folder. */
    public SortedMap<String, byte[]> pictures(List<DraftEnvelope> drafts) {
        for (DraftEnvelope draft : drafts) {
            if (!draft.get("signature_image").isEmpty()) {
                pictures.put(draft.get("signature_image"), onEnvelope(draft));
            }
            if (draft.onRoll) {
                onFile(draft.person);
                county.namesake(draft.person).ifPresent(this::onFile);
            }
            if (draft.person.kin != null) {
                onFile(draft.person.kin);
            }
        }
        return pictures;
    }

    private byte[] onEnvelope(DraftEnvelope draft) {
        Resident person = draft.person;
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
    private static String signedLast(DraftEnvelope draft) {
        boolean changed = draft.notes.contains("surname changed since registration");
        return changed ? draft.get("last_name") : draft.person.last;
    }

    private void onFile(Resident person) {
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

    private static String path(Resident person, int number) {
        return "signatures/roll/" + person.voterId() + "-" + number + ".png";
    }

    private double shaky(Resident person) {
        int age = person.ageOn(county.plan.date());
        return age < OLD ? 0 : Math.min(1, (age - OLD + 4) / 18.0);
    }

    private byte[] draw(String name, Hand hand, double shaky) {
        Paper paper = new Paper();
        Dice act = new Dice(dice.any());
        paper.write(new Signing(letters, hand, act).sign(name), hand, shaky, act);
        return PngFile.of(paper);
    }

    private byte[] mark() {
        Paper paper = new Paper();
        Hand hand = Hand.of(dice.any());
        List<Point> down = List.of(new Point(0, 2), new Point(0.9, 1.1), new Point(2, -0.1));
        List<Point> up = List.of(new Point(1.9, 2.1), new Point(1, 0.9), new Point(0.1, 0));
        paper.write(List.of(down, up), hand, 0.6, new Dice(dice.any()));
        return PngFile.of(paper);
    }
}
