package org.proviso.review.ui.mail;

import java.nio.charset.StandardCharsets;
import org.proviso.access.PlainPages;
import org.proviso.core.ElectionId;
import org.proviso.review.mail.MailListService;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.server.ResponseStatusException;

/** A list that was sent to the mail-ballot desk, as a file. Downloading it logs nothing; sending it is an act. */
@Controller
class MailListController {

    private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

    private final MailListService lists;

    MailListController(MailListService lists) {
        this.lists = lists;
    }

    @Bean
    static PlainPages mailListAddresses() {
        return PlainPages.forSignedIn("/review/mail-desk/*/*");
    }

    @GetMapping("/review/mail-desk/{election}/{list}")
    ResponseEntity<byte[]> file(@PathVariable String election, @PathVariable int list) {
        String text = lists.file(new ElectionId(election), list)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND, "There is no list " + list + "."));
        return ResponseEntity.ok()
                .contentType(CSV)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"mail-desk-list-" + list + ".csv\"")
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}
