package org.proviso.board.ui;

import org.proviso.board.SessionKey;
import org.proviso.board.record.Minutes;
import org.proviso.board.record.MinutesService;
import org.proviso.core.ElectionId;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.ModelAndView;

/** The record of a session as a page to be printed. */
@Controller
class MinutesController {

    private final MinutesService minutes;

    MinutesController(MinutesService minutes) {
        this.minutes = minutes;
    }

    @GetMapping("/board/minutes/{election}/{session}")
    ModelAndView minutes(@PathVariable String election, @PathVariable int session) {
        return new ModelAndView("board/minutes")
                .addObject("minutes", of(new SessionKey(new ElectionId(election), session)))
                .addObject("says", new PlainBoardWords());
    }

    private Minutes of(SessionKey key) {
        try {
            return minutes.minutes(key);
        } catch (IllegalArgumentException e) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND, e.getMessage(), e);
        }
    }
}
