package org.proviso.notices.ui;

import java.util.List;
import org.proviso.access.PlainPages;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.notices.DueNotice;
import org.proviso.notices.Letter;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeService;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;

/** Letters to print: one, or all that are due. Printing logs nothing; sending is logged separately. */
@Controller
class LetterPdfController {

    private static final String ONE = "/notices/letter.pdf";
    private static final String ALL = "/notices/letters.pdf";

    private final NoticeService notices;
    private final LetterPdf pdf;

    LetterPdfController(NoticeService notices, LetterPdf pdf) {
        this.notices = notices;
        this.pdf = pdf;
    }

    @Bean
    static PlainPages letterAddresses() {
        return PlainPages.forSignedIn(ONE, ALL);
    }

    @GetMapping(ONE)
    ResponseEntity<byte[]> one(@RequestParam String election, @RequestParam String envelope, @RequestParam int notice) {
        return answer(
                "letter-" + envelope + "-" + notice,
                List.of(letter(new EnvelopeKey(new ElectionId(election), new EnvelopeNumber(envelope)), notice)));
    }

    /** Every due letter the signed-in person may print, first due first. */
    @GetMapping(ALL)
    ResponseEntity<byte[]> all(@RequestParam String election) {
        List<Letter> letters = notices.due(new ElectionId(election)).stream()
                .map(DueNotice::notice)
                .map(this::letter)
                .toList();
        if (letters.isEmpty()) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND, "No letter is due.");
        }
        return answer("letters-" + election, letters);
    }

    private Letter letter(Notice notice) {
        return notices.letter(notice.key(), notice.number());
    }

    private Letter letter(EnvelopeKey key, int notice) {
        try {
            return notices.letter(key, notice);
        } catch (IllegalArgumentException e) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND, e.getMessage(), e);
        }
    }

    private ResponseEntity<byte[]> answer(String name, List<Letter> letters) {
        String file = name.replaceAll("[^A-Za-z0-9-]", "_") + ".pdf";
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + file + "\"")
                .body(pdf.of(letters));
    }
}
