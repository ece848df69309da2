package org.proviso.browser;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page of the program as a printer gives it, on letter paper. */
final class Paper {

    private static final int DOTS_PER_INCH = 96;
    private static final int MOST_SHEETS = 4;

    private Paper() {}

    /** The first sheets beside each other, as a PNG. */
    static byte[] picture(Browser browser) {
        Map<String, Object> printed =
                browser.driver().executeCdpCommand("Page.printToPDF", Map.of("paperWidth", 8.5, "paperHeight", 11));
        try (PDDocument document = Loader.loadPDF(Base64.getDecoder().decode((String) printed.get("data")))) {
            int sheets = Math.min(MOST_SHEETS, document.getNumberOfPages());
            PDFRenderer renderer = new PDFRenderer(document);
            BufferedImage first = renderer.renderImageWithDPI(0, DOTS_PER_INCH);
            BufferedImage all =
                    new BufferedImage(first.getWidth() * sheets, first.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D onto = all.createGraphics();
            for (int sheet = 0; sheet < sheets; sheet++) {
                onto.drawImage(renderer.renderImageWithDPI(sheet, DOTS_PER_INCH), sheet * first.getWidth(), 0, null);
            }
            onto.dispose();
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(all, "png", png);
            return png.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
