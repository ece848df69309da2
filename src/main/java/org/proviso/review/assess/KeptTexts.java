package org.proviso.review.assess;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * The two texts of an assessment, its facts and its content, and the bytes of their column: the number of a word list, then
 * both texts deflated (RFC 1950) over that list. Most of what is said of one case is said of every other too, so a row
 * takes a tenth or less. A word list never changes, since rows are read with it; a better one is the next number.
 */
public record KeptTexts(String facts, String content) {

    private static final byte LIST = 1;
    private static final byte[] WORDS = words("texts-" + LIST + ".txt");

    /** Stands between the texts; canonical JSON writes it as an escape. */
    private static final char END = '\0';

    /** The bytes of the column. */
    byte[] small() {
        Deflater deflater = new Deflater();
        try {
            deflater.setDictionary(WORDS);
            deflater.setInput((facts + END + content).getBytes(StandardCharsets.UTF_8));
            deflater.finish();
            ByteArrayOutputStream small = new ByteArrayOutputStream();
            small.write(LIST);
            byte[] buffer = new byte[2048];
            while (!deflater.finished()) {
                small.write(buffer, 0, deflater.deflate(buffer));
            }
            return small.toByteArray();
        } finally {
            deflater.end();
        }
    }

    /** The texts of such bytes; an {@link IllegalArgumentException} where they are none. */
    public static KeptTexts of(byte[] small) {
        if (small.length == 0 || small[0] != LIST) {
            throw new IllegalArgumentException("the texts are made small with a word list this version does not know");
        }
        String texts = inflated(small);
        int end = texts.indexOf(END);
        if (end < 0) {
            throw new IllegalArgumentException("the content of the texts is missing");
        }
        return new KeptTexts(texts.substring(0, end), texts.substring(end + 1));
    }

    private static String inflated(byte[] small) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(small, 1, small.length - 1);
            ByteArrayOutputStream texts = new ByteArrayOutputStream();
            byte[] buffer = new byte[8192];
            while (!inflater.finished()) {
                int length = inflater.inflate(buffer);
                if (length == 0 && inflater.needsDictionary()) {
                    inflater.setDictionary(WORDS);
                } else if (length == 0 && !inflater.finished()) {
                    throw new IllegalArgumentException("the texts end too soon");
                }
                texts.write(buffer, 0, length);
            }
            return texts.toString(StandardCharsets.UTF_8);
        } catch (DataFormatException e) {
            throw new IllegalArgumentException("the texts cannot be read: " + e.getMessage(), e);
        } finally {
            inflater.end();
        }
    }

    private static byte[] words(String name) {
        try (InputStream words = KeptTexts.class.getResourceAsStream(name)) {
            return Objects.requireNonNull(words, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
