package org.proviso.setup.first;

import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.access.PlainPages;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.server.ResponseStatusException;

/** A file to begin from, to be saved and filled. */
@Controller
class TemplateController {

    private final AccessService access;

    TemplateController(AccessService access) {
        this.access = access;
    }

    @Bean
    static PlainPages templateAddresses() {
        return PlainPages.forSignedIn("/set-up/templates/*");
    }

    static String address(NeededFile file) {
        return "/set-up/templates/" + file.file();
    }

    @GetMapping("/set-up/templates/{file}")
    ResponseEntity<String> template(@PathVariable String file) {
        access.demand(Permission.LOAD_FILES);
        NeededFile needed = NeededFile.find(file)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND, "There is no such file."));
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, "text/csv;charset=UTF-8")
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + needed.file() + "\"")
                .body(TemplateFile.text(needed));
    }
}
