package org.proviso.review.ui;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.proviso.access.PlainPages;
import org.proviso.core.ElectionId;
import org.proviso.review.queue.QueueFileService;
import org.proviso.review.queue.QueueFilterText;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A list of cases as a CSV file to keep. It is never cached. */
@Controller
class ListFileController {

    static final String ADDRESS = "/review/list.csv";

    private final QueueFileService files;

    ListFileController(QueueFileService files) {
        this.files = files;
    }

    @Bean
    static PlainPages listAddresses() {
        return PlainPages.forSignedIn(ADDRESS);
    }

    @GetMapping(ADDRESS)
    void file(@RequestParam String election, @RequestParam(defaultValue = "") String list, HttpServletResponse answer)
            throws IOException {
        answer.setContentType("text/csv;charset=UTF-8");
        answer.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        answer.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                "attachment; filename=\"cases-" + election.replaceAll("[^A-Za-z0-9-]", "_") + ".csv\"");
        try {
            files.write(QueueFilterText.read(new ElectionId(election), list), answer.getWriter());
        } catch (RuntimeException e) {
            // whoever may not have the file is told so, and gets no empty one
            if (!answer.isCommitted()) {
                answer.reset();
            }
            throw e;
        }
    }
}
