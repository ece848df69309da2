package org.proviso.notices.ui;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.proviso.notices.Letter;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/**
 * Letters as one PDF, each on a page of its own: tagged for screen readers (PDF/UA), with its fonts embedded, so that it
 * prints the same everywhere.
 */
@Component
class LetterPdf {

    private final ITemplateEngine templates;

    LetterPdf(ITemplateEngine templates) {
        this.templates = templates;
    }

    byte[] of(List<Letter> letters) {
        Context page = new Context(Locale.US);
        page.setVariable("letters", letters);
        String text = templates.process("notices/letters", page);
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            PdfRendererBuilder pdf = new PdfRendererBuilder();
            pdf.useFastMode();
            pdf.usePdfUaAccessibility(true);
            font(pdf, "text.ttf", "Proviso Text", 400);
            font(pdf, "text-strong.ttf", "Proviso Text", 600);
            font(pdf, "text-ext.ttf", "Proviso Text Extended", 400);
            font(pdf, "serif.ttf", "Proviso Serif", 600);
            font(pdf, "serif-ext.ttf", "Proviso Serif Extended", 600);
            pdf.withHtmlContent(text, "");
            pdf.toStream(bytes);
            pdf.run();
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void font(PdfRendererBuilder pdf, String file, String family, int weight) {
        FSSupplier<InputStream> stream =
                () -> LetterPdf.class.getResourceAsStream("/org/proviso/notices/fonts/" + file);
        pdf.useFont(stream, family, weight, FontStyle.NORMAL, true);
    }
}
