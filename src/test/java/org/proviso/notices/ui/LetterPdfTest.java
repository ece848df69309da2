package org.proviso.notices.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A letter on paper: everything it says, one page each, readable for screen readers, its fonts inside. */
class LetterPdfTest {

    private static PDDocument open(String... names) throws IOException {
        return Loader.loadPDF(
                Letters.pdf().of(List.of(names).stream().map(Letters::to).toList()));
    }

    @Test
    void each_letter_has_a_page_of_its_own_with_all_it_says() throws IOException {
        try (PDDocument pdf = open("Craig R Okafor", "Łucja Šimić", "O'Neil <Ann>")) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(3);
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text)
                    .contains("Craig R Okafor", "Łucja Šimić", "O'Neil <Ann>", "August 11, 2026, at 5:00 pm")
                    .contains("340 W Osprey St, Birch Hall, 49874");
        }
    }

    @Test
    void it_is_tagged_in_its_language_with_a_title() throws IOException {
        try (PDDocument pdf = open("Craig R Okafor")) {
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
            assertThat(pdf.getDocumentCatalog().getLanguage()).startsWith("en");
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Letters about provisional ballots");
        }
    }

    @Test
    void its_fonts_are_inside() throws IOException {
        try (PDDocument pdf = open("Łucja Šimić")) {
            int fonts = 0;
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    fonts++;
                }
            }
            assertThat(fonts).isGreaterThanOrEqualTo(3);
        }
    }
}
