package org.proviso.notices.ui;

import java.util.List;
import org.proviso.notices.Letter;

/** How long ten thousand letters take as one PDF. A command, never a test: run its main, with another count if wanted. */
public final class LetterBench {

    private static final int LETTERS = 10_000;

    private LetterBench() {}

    public static void main(String[] arguments) {
        List<Letter> letters = Letters.many(arguments.length > 0 ? Integer.parseInt(arguments[0]) : LETTERS);
        long start = System.nanoTime();
        byte[] pdf = Letters.pdf().of(letters);
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf("%,d letters in %.1f s, %,d bytes%n", letters.size(), seconds, pdf.length);
    }
}
