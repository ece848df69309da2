package org.proviso.board.ui;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.proviso.board.record.PublicDisplay;
import org.proviso.board.record.PublicDisplayService;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The display in the session's room, open to anyone with its link. It refreshes itself unless paused. */
@Controller
class PublicDisplayController {

    private static final String SECONDS = "10";

    private final PublicDisplayService rooms;

    PublicDisplayController(PublicDisplayService rooms) {
        this.rooms = rooms;
    }

    @GetMapping("/room")
    ModelAndView without() {
        return new ModelAndView("board/no-room", HttpStatus.NOT_FOUND);
    }

    @GetMapping("/room/{token}")
    ModelAndView room(
            @PathVariable String token, @RequestParam(required = false) String hold, HttpServletResponse response) {
        Optional<PublicDisplay> view = rooms.show(token);
        if (view.isEmpty()) {
            return without();
        }
        if (hold == null) {
            response.setHeader("Refresh", SECONDS);
        }
        return new ModelAndView("board/room")
                .addObject("view", view.get())
                .addObject("token", token)
                .addObject("holds", hold != null)
                .addObject("says", new PlainBoardWords());
    }
}
