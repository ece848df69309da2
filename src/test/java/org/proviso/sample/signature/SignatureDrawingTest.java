package org.proviso.sample.signature;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.Test;
import org.proviso.sample.county.Dice;

class SignatureDrawingTest {

    private final LetterShapes letters = new LetterShapes();

    @Test
    void what_is_packed_is_unpacked_the_same_by_the_platform() throws IOException {
        Random random = new Random(3);
        for (int size : new int[] {0, 1, 2, 3, 258, 259, 5_000, 70_000}) {
            byte[] data = new byte[size];
            for (int i = 0; i < size; i++) {
                data[i] = random.nextInt(40) == 0 ? (byte) random.nextInt() : (byte) (i / 300);
            }
            assertThat(unpacked(new FixedDeflater(data).pack())).isEqualTo(data);
        }
    }

    private static byte[] unpacked(byte[] packed) throws IOException {
        return new InflaterInputStream(new ByteArrayInputStream(packed), new Inflater(true)).readAllBytes();
    }

    @Test
    void every_letter_has_a_skeleton() {
        for (char letter = 'a'; letter <= 'z'; letter++) {
            assertThat(letters.skeleton(letter)).hasSizeGreaterThan(3);
            assertThat(letters.skeleton(Character.toUpperCase(letter))).hasSizeGreaterThan(3);
        }
    }

    @Test
    void accents_and_signs_are_written_as_plain_letters() {
        assertThat(LetterShapes.written("Núñez-O'Dell St. John")).isEqualTo("Nunez ODell St John");
    }

    @Test
    void two_signatures_of_one_hand_are_nearer_than_those_of_two_hands() {
        int nearer = 0;
        for (int person = 0; person < 40; person++) {
            Hand hand = Hand.of(person);
            byte[] first = signed(hand, 1);
            double own = difference(first, signed(hand, 2));
            double other = difference(first, signed(hand.another(new Dice(person)), 3));
            assertThat(own).isPositive();
            nearer += own < other ? 1 : 0;
        }
        assertThat(nearer).isGreaterThanOrEqualTo(32);
    }

    @Test
    void a_signature_keeps_clear_of_the_edge_however_long_the_name() {
        byte[] shades = shades(Hand.of(5), 1, "Maximiliana Vandermolen Abernathy Whitfield Szymanski");
        int line = Paper.WIDTH / 4 + 1;
        assertThat(Arrays.copyOfRange(shades, 1, line)).containsOnly(-1);
        for (int y = 0; y < Paper.HEIGHT; y++) {
            assertThat(shades[y * line + 1]).isEqualTo((byte) -1);
            assertThat(shades[y * line + line - 1]).isEqualTo((byte) -1);
        }
    }

    private byte[] signed(Hand hand, long day) {
        return shades(hand, day, "Margaret Whitfield");
    }

    private byte[] shades(Hand hand, long day, String name) {
        Paper paper = new Paper();
        Dice act = new Dice(day);
        paper.write(new Signing(letters, hand, act).sign(name), hand, 0, act);
        return paper.shades();
    }

    /** How unlike the amounts of ink are, column by column and line by line. */
    private static double difference(byte[] shades, byte[] other) {
        double[] a = profile(shades);
        double[] b = profile(other);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += Math.abs(a[i] - b[i]);
        }
        return sum;
    }

    private static double[] profile(byte[] shades) {
        int line = Paper.WIDTH / 4 + 1;
        double[] ink = new double[line + Paper.HEIGHT];
        for (int i = 0; i < shades.length; i++) {
            int dark = i % line == 0 ? 0 : 8 - Integer.bitCount(shades[i] & 0xff);
            ink[i % line] += dark;
            ink[line + i / line] += dark;
        }
        return ink;
    }
}
