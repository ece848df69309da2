package org.proviso.review.ui;

import org.proviso.access.PlainPages;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.ends.EndedCaseService;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** The form that goes with an envelope to another county, as a page to be printed. Printing logs nothing. */
@Controller
class SentOnFormController {

    private final EndedCaseService ended;

    SentOnFormController(EndedCaseService ended) {
        this.ended = ended;
    }

    @Bean
    static PlainPages sentOnAddresses() {
        return PlainPages.forSignedIn("/review/sent-on/*/*");
    }

    @GetMapping("/review/sent-on/{election}/{envelope}")
    ModelAndView form(@PathVariable String election, @PathVariable String envelope) {
        return new ModelAndView("review/sent-on")
                .addObject(
                        "form",
                        EnvelopeNumber.find(envelope)
                                .flatMap(number -> ended.form(new EnvelopeKey(new ElectionId(election), number)))
                                .orElseThrow(() -> new ResponseStatusException(
                                        HttpStatus.NOT_FOUND, "Envelope " + envelope + " has no form.")));
    }
}
