package org.proviso.sample.signature;

import java.util.ArrayList;
import java.util.List;
import org.proviso.sample.county.Dice;
import org.proviso.sample.signature.LetterShapes.Point;

/** One act of signing: the way of the pen over the paper, stroke by stroke, in pixels with y down. */
final class Signing {

    private static final double GAP = 0.55;
    private static final double SLIP = 0.06;

    private final LetterShapes letters;
    private final Hand hand;
    private final Dice dice;
    private final List<List<Point>> strokes = new ArrayList<>();
    private List<Point> stroke = new ArrayList<>();
    private double x;

    Signing(LetterShapes letters, Hand hand, Dice dice) {
        this.letters = letters;
        this.hand = hand.onAnotherDay(dice);
        this.dice = dice;
    }

    /** Strokes in letter heights, the pen starting at the origin; y is still up. */
    List<List<Point>> sign(String name) {
        for (String word : LetterShapes.written(name).split(" +")) {
            word(word);
            lift();
            x += GAP * hand.width();
        }
        flourish();
        return strokes;
    }

    private void word(String word) {
        for (int i = 0; i < word.length(); i++) {
            char letter = i == 0 ? Character.toUpperCase(word.charAt(i)) : Character.toLowerCase(word.charAt(i));
            letter(letter, i);
            if (i == 0 && !hand.joined()) {
                lift();
            }
            mark(letter);
        }
    }

    /** The farther into the word, the flatter and narrower a hasty hand writes. */
    private void letter(char letter, int place) {
        double rest = place < 2 ? 1 : Math.max(0.22, 1 - hand.haste() * (place - 1) / 3.5);
        double wide = hand.width() * (place == 0 ? hand.capital() : 0.35 + 0.65 * rest);
        Dice habit = new Dice(hand.seed() * 31 + letter).apart("habit");
        double end = 0;
        for (Point point : letters.skeleton(letter)) {
            double px = point.x() + hand.own() * habit.wobble() + SLIP * dice.wobble();
            double py = tall(point.y(), place, rest) + hand.own() * habit.wobble() + SLIP * dice.wobble();
            stroke.add(new Point(x + px * wide, py));
            end = Math.max(end, point.x());
        }
        x += end * wide * 0.93;
    }

    private double tall(double y, int place, double rest) {
        if (place == 0) {
            return y * hand.capital();
        }
        if (y < 0) {
            return y * hand.descender() * (0.5 + 0.5 * rest);
        }
        return y > 1.1 ? 1 + (y - 1) * hand.ascender() * (0.5 + 0.5 * rest) : y * rest;
    }

    /** The dot of an i and the bar of a t, set after the letter as far as the hand cares. */
    private void mark(char letter) {
        if (letter == 'i' || letter == 'j') {
            double at = x - 0.3 * hand.width() + 0.1 * dice.wobble();
            strokes.add(List.of(new Point(at, 1.5), new Point(at + 0.05, 1.56), new Point(at + 0.1, 1.52)));
        } else if (letter == 't') {
            double at = x - 0.45 * hand.width() + 0.08 * dice.wobble();
            strokes.add(
                    List.of(new Point(at - 0.3, 1.12), new Point(at, 1.2), new Point(at + 0.55 * hand.width(), 1.22)));
        }
    }

    private void flourish() {
        double end = x - GAP * hand.width();
        if (hand.flourish() == 0) {
            strokes.add(List.of(
                    new Point(end, -0.35),
                    new Point(end * 0.55, -0.75 + 0.1 * dice.wobble()),
                    new Point(end * 0.2, -0.6),
                    new Point(end * 0.5, -0.95),
                    new Point(end * 0.95, -0.8)));
        } else if (hand.flourish() == 1) {
            strokes.add(List.of(
                    new Point(end - 0.2, 0.1),
                    new Point(end + 0.6, 0.25 + 0.1 * dice.wobble()),
                    new Point(end + 1.5, 0.05),
                    new Point(end + 2.1, 0.5)));
        }
    }

    private void lift() {
        if (stroke.size() > 1) {
            strokes.add(stroke);
        }
        stroke = new ArrayList<>();
    }
}
