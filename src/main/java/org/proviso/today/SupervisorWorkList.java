package org.proviso.today;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.election.rules.RulingService;
import org.proviso.review.news.NewerFileService;
import org.proviso.review.news.UnconfirmedList;
import org.proviso.review.queue.WaitingSince;
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

    /** What a different supervisor has to confirm, what the absent hold, and how many steps are left before closing. */
    List<WaitingWork> of(ElectionLine election, WaitingSince since) {
        List<WaitingWork> lines = new ArrayList<>();
        if (access.isPermitted(Permission.LOAD_FILES)) {
            lines.add(listsToConfirm(election));
        }
        if (access.isPermitted(Permission.SIGN_RULINGS)) {
            lines.add(rulings(election.id()));
        }
        if (access.isPermitted(Permission.RELEASE_CASES) && since.held().oldest() != null) {
            lines.add(held(since.held(), since.held().oldest()));
        }
        if (access.isPermitted(Permission.CLOSE_ELECTION)) {
            lines.add(steps(election.id()));
        }
        return lines;
    }

    /** A list that changes decided cases stands still until somebody else confirms it. */
    private WaitingWork listsToConfirm(ElectionLine election) {
        List<UnconfirmedList> waiting = lists.waiting(election.id());
        return WaitingWork.of(
                        waiting.size(),
                        "Newer lists to confirm",
                        "they change decided cases; a different person confirms",
                        "Open Setup",
                        "set-up")
                .since(WaitingWorkList.oldest(
                        waiting.stream().map(UnconfirmedList::broughtAt).toList()))
                .late(true);
    }

    private WaitingWork rulings(ElectionId electionId) {
        int number = (int) rulings.acts(electionId).stream()
                .filter(ruling -> ruling.recorded().isWaiting() && !ruling.byYou())
                .count();
        return WaitingWork.of(
                number,
                "County rulings to put in force",
                "recorded by another supervisor",
                "Open County rulings",
                "set-up/rulings");
    }

    /** Whoever took them may be away: a supervisor releases each on its own page. */
    private static WaitingWork held(WaitingSince.Held held, EnvelopeNumber oldest) {
        return WaitingWork.of(
                        held.number(),
                        held.number() == 1 ? "Case held without an act" : "Cases held without an act",
                        "taken more than a day ago; whoever has them may be away",
                        "Open oldest case",
                        "review/case/" + oldest)
                .since(held.since());
    }

    private WaitingWork steps(ElectionId electionId) {
        List<ClosingLine> missing = canvass.missing(electionId).missing();
        return WaitingWork.of(
                missing.size(),
                missing.size() == 1 ? "Step left before closing" : "Steps left before closing",
                missing.stream().limit(2).map(ClosingLine::words).collect(Collectors.joining(", ")),
                "See what is missing",
                "canvass/closing");
    }
}
