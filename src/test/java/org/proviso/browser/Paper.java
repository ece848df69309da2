package org.proviso.browser;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
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
            List<BufferedImage> pictures = new ArrayList<>();
            for (int sheet = 0; sheet < sheets; sheet++) {
                pictures.add(renderer.renderImageWithDPI(sheet, DOTS_PER_INCH));
            }
            BufferedImage all = beside(pictures);
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(all, "png", png);
            return png.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage beside(List<BufferedImage> pictures) {
        int width = pictures.stream().mapToInt(BufferedImage::getWidth).sum();
        int height = pictures.stream().mapToInt(BufferedImage::getHeight).max().orElse(1);
        BufferedImage all = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D onto = all.createGraphics();
        onto.setColor(Color.WHITE);
        onto.fillRect(0, 0, width, height);
        int x = 0;
        for (BufferedImage picture : pictures) {
            onto.drawImage(picture, x, 0, null);
            x += picture.getWidth();
        }
        onto.dispose();
        return all;
    }
}
