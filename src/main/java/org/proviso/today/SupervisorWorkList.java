package org.proviso.today;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.core.ElectionId;
import org.proviso.election.rules.RulingService;
import org.proviso.review.news.NewerFileService;
import org.proviso.review.news.UnconfirmedList;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.springframework.stereotype.Component;

/** What waits for supervisors alone: what another of them has begun, and the steps before closing. */
@Component
class SupervisorWorkList {

    private final AccessService access;
    private final NewerFileService lists;
    private final RulingService rulings;
    private final CanvassService canvass;

    SupervisorWorkList(AccessService access, NewerFileService lists, RulingService rulings, CanvassService canvass) {
        this.access = access;
        this.lists = lists;
        this.rulings = rulings;
        this.canvass = canvass;
    }

    /** What a different supervisor has to confirm. */
    List<WaitingWork> toConfirm(ElectionLine election) {
        List<WaitingWork> lines = new ArrayList<>();
        if (access.isPermitted(Permission.LOAD_FILES)) {
            lines.add(listsToConfirm(election));
        }
        if (access.isPermitted(Permission.SIGN_RULINGS)) {
            lines.add(rulings(election.id()));
        }
        return lines;
    }

    /** How many steps are left before closing, for whoever may close. */
    Optional<WaitingWork> closing(ElectionId electionId) {
        return access.isPermitted(Permission.CLOSE_ELECTION) ? Optional.of(steps(electionId)) : Optional.empty();
    }

    /** A list that changes decided cases stands still until somebody else confirms it: how long it has waited is said. */
    private WaitingWork listsToConfirm(ElectionLine election) {
        List<UnconfirmedList> waiting = lists.waiting(election.id());
        String since = waiting.stream()
                .map(UnconfirmedList::broughtAt)
                .min(Comparator.naturalOrder())
                .map(first -> "waiting since " + UsDates.near(LocalDateTime.ofInstant(first, election.zone())))
                .orElse("");
        return new WaitingWork(
                waiting.size(),
                "Newer lists to confirm",
                "they change decided cases; a different person confirms",
                since,
                true,
                "Open Setup",
                "set-up",
                null);
    }

    private WaitingWork rulings(ElectionId electionId) {
        int number = (int) rulings.acts(electionId).stream()
                .filter(ruling -> ruling.recorded().isWaiting() && !ruling.byYou())
                .count();
        return new WaitingWork(
                number,
                "County rulings to put in force",
                "recorded by another supervisor",
                "",
                false,
                "Open County rulings",
                "set-up/rulings",
                null);
    }

    private WaitingWork steps(ElectionId electionId) {
        List<ClosingLine> missing = canvass.missing(electionId).missing();
        return new WaitingWork(
                missing.size(),
                missing.size() == 1 ? "Step left before closing" : "Steps left before closing",
                missing.stream().limit(2).map(ClosingLine::words).collect(Collectors.joining(", ")),
                "",
                false,
                "See what is missing",
                "canvass/closing",
                null);
    }
}
