package org.proviso.review.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.proviso.intake.StoredImage;

/** How many dots a picture of a signature is wide and high, so that pages draw several at one scale; 0 where it does not tell. */
public record SignaturePicture(int width, int height) {

    private static final SignaturePicture UNKNOWN = new SignaturePicture(0, 0);

    /** The head of the file is read, not its dots. */
    static SignaturePicture of(StoredImage image) {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(image.content()))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return UNKNOWN;
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return new SignaturePicture(reader.getWidth(0), reader.getHeight(0));
            } finally {
                reader.dispose();
            }
        } catch (IOException e) {
            return UNKNOWN;
        }
    }
}
