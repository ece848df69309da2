package org.proviso.status.ui;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.proviso.access.ClientAddress;
import org.proviso.core.ReceiptNumber;
import org.proviso.status.LookupPageInfo;
import org.proviso.status.LookupResult;
import org.proviso.status.StatusService;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/**
 * The voter's look-up. What was typed is sent by POST, so that it stands in no address and no log, and the answer is
 * kept by no cache.
 */
@Controller
class StatusController {

    static final String STATUS = "/status";

    private final StatusService status;
    private final LookUpGuard guard;
    private final VoterAnswerWriter answers;

    StatusController(StatusService status, LookUpGuard guard, VoterAnswerWriter answers) {
        this.status = status;
        this.guard = guard;
        this.answers = answers;
    }

    @GetMapping(STATUS)
    ModelAndView form() {
        return form(LookUpForm.EMPTY);
    }

    @PostMapping(STATUS)
    ModelAndView lookUp(
            @RequestParam(defaultValue = "") String receipt,
            @RequestParam(defaultValue = "") String month,
            @RequestParam(defaultValue = "") String day,
            @RequestParam(defaultValue = "") String year,
            HttpServletRequest request,
            HttpServletResponse response,
            Locale language) {
        LookUpForm form = new LookUpForm(receipt, month, day, year);
        Optional<LocalDate> born = form.birthDate();
        Optional<ReceiptNumber> receiptNo = form.receiptNo();
        if (receiptNo.isEmpty() || born.isEmpty()) {
            return unclear(form, born.isEmpty());
        }
        OptionalLong minutes = guard.minutesToWait(ClientAddress.of(request), receiptNo.get());
        if (minutes.isPresent()) {
            response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(60 * minutes.getAsLong()));
            return page("status/wait", HttpStatus.TOO_MANY_REQUESTS, form).addObject("minutes", minutes.getAsLong());
        }
        LookupResult own = status.lookUp(receiptNo.get(), born.get());
        return own instanceof LookupResult.Found found
                ? page("status/answer", HttpStatus.OK, form)
                        .addObject("own", answers.of(found, receiptNo.get(), language))
                : form(form).addObject("nothing", true).addObject("slip", slip((LookupResult.NothingFits) own));
    }

    /** The end of the message key that says what is wrong with the number itself; empty if nothing is. */
    private String slip(LookupResult.NothingFits nothing) {
        boolean always = status.office().map(LookupPageInfo::always).orElse(false);
        return nothing.slip() == null ? "" : nothing.slip().code() + (always ? "" : ".newest");
    }

    private ModelAndView unclear(LookUpForm form, boolean noDate) {
        ModelAndView page = form(form);
        page.setStatus(HttpStatus.UNPROCESSABLE_ENTITY);
        return page.addObject("noReceipt", form.receiptNo().isEmpty()).addObject("noDate", noDate);
    }

    private ModelAndView form(LookUpForm form) {
        ModelAndView page = page("status/form", HttpStatus.OK, form)
                .addObject("noReceipt", false)
                .addObject("noDate", false)
                .addObject("digits", false);
        status.office()
                .ifPresent(facts -> page.addObject("office", facts.office())
                        .addObject("newest", facts.electionName())
                        .addObject("digits", facts.always()));
        return page;
    }

    private static ModelAndView page(String name, HttpStatus code, LookUpForm form) {
        return new ModelAndView(name, code).addObject("form", form);
    }
}
