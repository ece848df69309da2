package org.proviso.sample.signature;

import java.util.List;
import org.proviso.sample.county.Dice;
import org.proviso.sample.signature.LetterShapes.Point;

/** A slip of paper of 360 by 110 pixels on which a pen leaves ink; each pixel holds how dark it is, from 0 to 1. */
final class Paper {

    static final int WIDTH = 360;
    static final int HEIGHT = 110;
    private static final int MARGIN = 12;

    private final float[] ink = new float[WIDTH * HEIGHT];

    /** Writes the strokes with that hand's slant, slope and pen, centered and made to fit; shaky from 0 to 1. */
    void write(List<List<Point>> strokes, Hand hand, double shaky, Dice dice) {
        Frame frame = Frame.around(strokes, hand);
        for (List<Point> stroke : strokes) {
            for (int i = 0; i + 1 < stroke.size(); i++) {
                double tremor = shaky * 0.16;
                piece(stroke, i, frame, hand, tremor * dice.wobble(), tremor * dice.wobble());
            }
        }
    }

    private void piece(List<Point> stroke, int at, Frame frame, Hand hand, double tremorX, double tremorY) {
        Point a = stroke.get(Math.max(0, at - 1));
        Point b = stroke.get(at);
        Point c = stroke.get(at + 1);
        Point d = stroke.get(Math.min(stroke.size() - 1, at + 2));
        double down = c.y() < b.y() ? 1.2 : 0.85;
        int steps = 8 + (int) (2 * frame.apart(b, c));
        for (int step = 0; step <= steps; step++) {
            double t = (double) step / steps;
            double shake = StrictMath.sin(t * 9.42);
            double px = curve(a.x(), b.x(), c.x(), d.x(), t) + tremorX * shake;
            double py = curve(a.y(), b.y(), c.y(), d.y(), t) + tremorY * shake;
            dab(frame.across(px, py), frame.downward(px, py), hand.pen() * (1 + (down - 1) * StrictMath.sin(t * 3.14)));
        }
    }

    /** A curve through b and c that leaves and arrives in the direction of the neighbors (Catmull and Rom, 1974). */
    private static double curve(double a, double b, double c, double d, double t) {
        return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t);
    }

    private void dab(double x, double y, double radius) {
        int reach = (int) radius + 2;
        for (int py = Math.max(0, (int) y - reach); py <= Math.min(HEIGHT - 1, (int) y + reach); py++) {
            for (int px = Math.max(0, (int) x - reach); px <= Math.min(WIDTH - 1, (int) x + reach); px++) {
                double away = StrictMath.sqrt((px - x) * (px - x) + (py - y) * (py - y));
                float dark = (float) Math.max(0, Math.min(1, radius + 0.5 - away));
                ink[py * WIDTH + px] = Math.max(ink[py * WIDTH + px], dark);
            }
        }
    }

    /** Four shades, four pixels to a byte, white as three; each line of the picture starts with an empty byte. */
    byte[] shades() {
        int line = WIDTH / 4 + 1;
        byte[] bytes = new byte[line * HEIGHT];
        for (int i = 0; i < ink.length; i++) {
            int shade = 3 - Math.round(3 * ink[i]);
            int x = i % WIDTH;
            bytes[i / WIDTH * line + 1 + x / 4] |= (byte) (shade << (6 - 2 * (x % 4)));
        }
        return bytes;
    }

    /** From letter heights to pixels: slanted, sloped, shrunk where it would not fit, and set in the middle. */
    private record Frame(double scaleX, double scaleY, double left, double base, double slant, double slope) {

        static Frame around(List<List<Point>> strokes, Hand hand) {
            double minX = 1e9;
            double maxX = -1e9;
            double minY = 1e9;
            double maxY = -1e9;
            for (List<Point> stroke : strokes) {
                for (Point point : stroke) {
                    double x = point.x() + point.y() * hand.slant();
                    double y = point.y() + x * hand.slope();
                    minX = Math.min(minX, x);
                    maxX = Math.max(maxX, x);
                    minY = Math.min(minY, y);
                    maxY = Math.max(maxY, y);
                }
            }
            double scaleX = Math.min(hand.height(), (WIDTH - 2 * MARGIN) / (maxX - minX));
            double scaleY = Math.min(hand.height(), (HEIGHT - 2 * MARGIN) / (maxY - minY));
            double left = (WIDTH - scaleX * (minX + maxX)) / 2;
            double base = (HEIGHT + scaleY * (minY + maxY)) / 2;
            return new Frame(scaleX, scaleY, left, base, hand.slant(), hand.slope());
        }

        double apart(Point a, Point b) {
            double wide = across(a.x(), a.y()) - across(b.x(), b.y());
            double high = downward(a.x(), a.y()) - downward(b.x(), b.y());
            return Math.abs(wide) + Math.abs(high);
        }

        double across(double x, double y) {
            return left + scaleX * (x + y * slant);
        }

        double downward(double x, double y) {
            return base - scaleY * (y + (x + y * slant) * slope);
        }
    }
}
