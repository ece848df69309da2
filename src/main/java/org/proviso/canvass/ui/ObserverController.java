package org.proviso.canvass.ui;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.board.BoardService;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.observers.ObserverCase;
import org.proviso.canvass.observers.ObserverCaseService;
import org.proviso.canvass.observers.ObserverLedgerService;
import org.proviso.canvass.outcomes.EnvelopeOutcomesService;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeElections;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/**
 * What an observer may read, as plain pages: the figures, every case without a word that says whose it is, the ledger.
 * They are about the newest election.
 */
@Controller
class ObserverController {

    private static final int PAGE = 100;

    private final OfficeElections elections;
    private final CanvassService canvass;
    private final EnvelopeOutcomesService outcomes;
    private final ObserverCaseService cases;
    private final ObserverLedgerService ledger;
    private final BoardService board;
    private final Clock clock;

    ObserverController(
            OfficeElections elections,
            CanvassService canvass,
            EnvelopeOutcomesService outcomes,
            ObserverCaseService cases,
            ObserverLedgerService ledger,
            BoardService board,
            Clock clock) {
        this.elections = elections;
        this.canvass = canvass;
        this.outcomes = outcomes;
        this.cases = cases;
        this.ledger = ledger;
        this.board = board;
        this.clock = clock;
    }

    @GetMapping("/observe")
    ModelAndView figures() {
        Optional<ElectionLine> newest = elections.all().stream().findFirst();
        if (newest.isEmpty()) {
            return new ModelAndView("canvass/observe-nothing");
        }
        ElectionLine election = newest.get();
        return page("canvass/observe", election)
                .addObject("now", LocalDateTime.ofInstant(clock.instant(), election.zone()))
                .addObject("accounts", canvass.accounts(election.id()))
                .addObject("shown", PlacesPart.SHOWN)
                .addObject("outcomes", outcomes.outcomes(election.id()))
                .addObject("sessions", board.sessions(election.id()));
    }

    @GetMapping("/observe/cases")
    ModelAndView list(@RequestParam(defaultValue = "1") int page) {
        ElectionLine election = election();
        int all = cases.count(election.id());
        int pages = Math.max(1, (all + PAGE - 1) / PAGE);
        int shown = Math.min(Math.max(1, page), pages);
        return page("canvass/observe-cases", election)
                .addObject("all", all)
                .addObject("page", shown)
                .addObject("pages", pages)
                .addObject("cases", cases.page(election.id(), (shown - 1) * PAGE, PAGE));
    }

    @GetMapping("/observe/cases/{envelopeNo}")
    ModelAndView one(@PathVariable String envelopeNo) {
        ElectionLine election = election();
        ObserverCase observerCase = EnvelopeNumber.find(envelopeNo)
                .flatMap(number -> cases.find(new EnvelopeKey(election.id(), number)))
                .orElseThrow(ObserverController::none);
        return page("canvass/observe-case", election).addObject("one", observerCase);
    }

    /** Newest first; {@code before} limits the list to earlier acts. */
    @GetMapping("/observe/ledger")
    ModelAndView acts(@RequestParam(defaultValue = "0") long before) {
        ElectionLine election = election();
        ObserverLedgerService.Acts acts = ledger.acts(election.id(), before, PAGE);
        return page("canvass/observe-ledger", election)
                .addObject("acts", acts.newestFirst())
                .addObject("older", acts.older());
    }

    private ModelAndView page(String template, ElectionLine election) {
        return new ModelAndView(template)
                .addObject("election", election)
                .addObject("head", ledger.head(election.id()))
                .addObject("says", new ObserverWords(election.zone()));
    }

    private ElectionLine election() {
        return elections.all().stream().findFirst().orElseThrow(ObserverController::none);
    }

    private static ResponseStatusException none() {
        return new ResponseStatusException(HttpStatus.NOT_FOUND, "There is no page at this address.");
    }
}
