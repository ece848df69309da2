package org.proviso.setup;

import org.proviso.access.PlainPages;
import org.proviso.core.ElectionId;
import org.proviso.election.orders.CourtOrderScanService;
import org.proviso.election.orders.KeptPaper;
import org.springframework.context.annotation.Bean;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.server.ResponseStatusException;

/** The scan of a court's order, to be saved and opened there. It is never cached. */
@Controller
class CourtOrderScanController {

    private final CourtOrderScanService scans;

    CourtOrderScanController(CourtOrderScanService scans) {
        this.scans = scans;
    }

    @Bean
    static PlainPages orderScanAddresses() {
        return PlainPages.forSignedIn("/set-up/orders/*/*/*");
    }

    @GetMapping("/set-up/orders/{election}/{order}/{scan}")
    ResponseEntity<byte[]> scan(@PathVariable String election, @PathVariable int order, @PathVariable int scan) {
        KeptPaper paper = scans.scan(new ElectionId(election), order, scan)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND, "There is no such scan."));
        String end = paper.mediaType().substring(paper.mediaType().indexOf('/') + 1);
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noStore())
                .contentType(MediaType.parseMediaType(paper.mediaType()))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        "attachment; filename=\"court-order-" + order + "-" + scan + "." + end + "\"")
                .body(paper.content());
    }
}
