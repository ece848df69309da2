package org.proviso.review.ui;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.proviso.access.PlainPages;
import org.proviso.core.ElectionId;
import org.proviso.files.table.TableFormat;
import org.proviso.review.queue.QueueFileService;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueFilterText;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A list of cases as a file to keep. It is never cached. */
@Controller
class ListFileController {

    private static final String ADDRESS = "/review/list.";

    private final QueueFileService files;

    ListFileController(QueueFileService files) {
        this.files = files;
    }

    @Bean
    static PlainPages listAddresses() {
        return PlainPages.forSignedIn(ADDRESS + "csv", ADDRESS + "xlsx");
    }

    static String address(TableFormat format, QueueFilter filter) {
        return ADDRESS + format.name().toLowerCase(Locale.ROOT) + "?election=" + filter.electionId() + "&"
                + CaseView.LIST + "=" + URLEncoder.encode(QueueFilterText.write(filter), StandardCharsets.UTF_8);
    }

    @GetMapping(ADDRESS + "csv")
    void csv(@RequestParam String election, @RequestParam(defaultValue = "") String list, HttpServletResponse answer)
            throws IOException {
        send(TableFormat.CSV, QueueFilterText.read(new ElectionId(election), list), answer);
    }

    @GetMapping(ADDRESS + "xlsx")
    void xlsx(@RequestParam String election, @RequestParam(defaultValue = "") String list, HttpServletResponse answer)
            throws IOException {
        send(TableFormat.XLSX, QueueFilterText.read(new ElectionId(election), list), answer);
    }

    private void send(TableFormat format, QueueFilter filter, HttpServletResponse answer) throws IOException {
        answer.setContentType(format.contentType());
        answer.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        answer.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                "attachment; filename=\"" + format.fileName("cases-" + filter.electionId()) + "\"");
        try {
            files.write(filter, format, answer.getOutputStream());
        } catch (RuntimeException e) {
            // whoever may not have the file is told so, and gets no empty one
            if (!answer.isCommitted()) {
                answer.reset();
            }
            throw e;
        }
    }
}
