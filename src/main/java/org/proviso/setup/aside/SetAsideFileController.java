package org.proviso.setup.aside;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.proviso.access.PlainPages;
import org.proviso.core.ElectionId;
import org.proviso.roll.ListReadService;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The rows of a list that are set aside, as a CSV file: for whoever mends the list where it comes from, made safe for spreadsheets. */
@Controller
class SetAsideFileController {

    private final ListReadService lists;

    SetAsideFileController(ListReadService lists) {
        this.lists = lists;
    }

    @Bean
    static PlainPages setAsideAddresses() {
        return PlainPages.forSignedIn("/set-up/set-aside/*/*");
    }

    static String address(ElectionId election, int list) {
        return "set-up/set-aside/" + election + "/" + list;
    }

    @GetMapping("/set-up/set-aside/{election}/{list}")
    void file(@PathVariable String election, @PathVariable int list, HttpServletResponse answer) throws IOException {
        ElectionId id = new ElectionId(election);
        answer.setContentType("text/csv;charset=UTF-8");
        answer.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        answer.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"set-aside-" + list + ".csv\"");
        try {
            lists.writeAside(id, list, answer.getWriter());
        } catch (RuntimeException e) {
            // whoever may not have the file is told so, and gets no empty one
            if (!answer.isCommitted()) {
                answer.reset();
            }
            throw e;
        }
    }
}
