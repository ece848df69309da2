package org.proviso.files.election;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.proviso.files.InputException;

/** The scan of a paper: a PDF by its first bytes, of at most 10 MB, or a picture as {@link ImageFile} has it. */
public final class PaperFile {

    static final long LARGEST = 10_000_000;

    private static final byte[] PDF = "%PDF-".getBytes(StandardCharsets.US_ASCII);

    private PaperFile() {}

    /** What kind of file these bytes are; what is wrong with them is an {@link InputException}. */
    public static String checkedType(String name, byte[] bytes) {
        String shown = name.replaceAll("\\p{Cntrl}", "?");
        boolean pdf = bytes.length >= PDF.length && Arrays.equals(bytes, 0, PDF.length, PDF, 0, PDF.length);
        if (!pdf) {
            try {
                return ImageFile.checkedType(name, bytes);
            } catch (InputException e) {
                throw new InputException(shown, 0, "", "is no PDF up to 10 MB and no PNG or JPEG up to 5 MB");
            }
        }
        if (bytes.length > LARGEST) {
            throw new InputException(shown, 0, "", "is larger than 10 MB");
        }
        return "application/pdf";
    }
}
