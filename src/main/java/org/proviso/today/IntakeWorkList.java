package org.proviso.today;

import java.util.ArrayList;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.keying.KeyingService;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.notices.DueCount;
import org.proviso.notices.NoticeService;
import org.proviso.notices.told.ToldDateService;
import org.proviso.review.queue.WaitingSince;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.springframework.stereotype.Component;

/** What waits for those who receive and key envelopes and tell voters: paper, returns, letters, and running time. */
@Component
class IntakeWorkList {

    private static final int NAMED = 3;

    private final AccessService access;
    private final KeyingService keying;
    private final NumberCheckService numbers;
    private final NoticeService notices;
    private final ToldDateService told;

    IntakeWorkList(
            AccessService access,
            KeyingService keying,
            NumberCheckService numbers,
            NoticeService notices,
            ToldDateService told) {
        this.access = access;
        this.keying = keying;
        this.numbers = numbers;
        this.notices = notices;
        this.told = told;
    }

    List<WaitingWork> of(ElectionLine election, WaitingSince since, OutOfBalance.Found found) {
        ElectionId electionId = election.id();
        List<WaitingWork> lines = new ArrayList<>();
        if (access.isPermitted(Permission.KEY_ENVELOPES)) {
            lines.add(notKeyed(since.notKeyed()));
            lines.add(keying(electionId, since.notKeyed().number()));
            lines.add(numbers(electionId));
        }
        if (access.isPermitted(Permission.RECEIVE_BAGS)) {
            lines.add(silent(found.withoutReturn()));
        }
        if (access.isPermitted(Permission.RECORD_CURE_EVIDENCE)) {
            lines.add(lapsing(since.lapsing()));
        }
        if (access.isPermitted(Permission.PRINT_CURE_LETTERS)) {
            lines.add(notices(election));
            lines.add(toldAnother(electionId));
        }
        return lines;
    }

    private static WaitingWork notKeyed(WaitingSince.NotKeyed waiting) {
        return WaitingWork.of(
                        waiting.number(),
                        "Envelopes not seen",
                        "received more than a day ago, not keyed yet",
                        "Key next envelope",
                        "intake")
                .since(waiting.oldest())
                .late(true);
    }

    private WaitingWork keying(ElectionId electionId, int ofBefore) {
        return WaitingWork.of(
                        Math.max(0, keying.waiting(electionId).size() - ofBefore),
                        "Envelopes to key",
                        "received, not keyed yet",
                        "Key next envelope",
                        "intake")
                .withKey("k");
    }

    private WaitingWork numbers(ElectionId electionId) {
        int number = (int) numbers.all(electionId).stream()
                .filter(marked -> !marked.isSettled())
                .count();
        return WaitingWork.of(
                number, "Numbers to settle", "missing, or on several envelopes", "Settle numbers", "intake");
    }

    private static WaitingWork silent(List<String> places) {
        String more = places.size() > NAMED ? ", and " + (places.size() - NAMED) + " more" : "";
        return WaitingWork.of(
                places.size(),
                places.size() == 1 ? "Silent location" : "Silent locations",
                "no return from " + String.join(", ", places.subList(0, Math.min(NAMED, places.size()))) + more,
                "Record transmittal",
                places.size() == 1 ? RecordTransmittal.missing(places.get(0)) : "intake/transmittals");
    }

    /** A reviewer sees whose they are in the queue, whose order begins with them; the desk finds them by their paper. */
    private WaitingWork lapsing(WaitingSince.Lapsing lapsing) {
        boolean hasTheQueue = access.isPermitted(Permission.SEARCH);
        String first = lapsing.first() == null
                ? ""
                : "the first at "
                        + UsDates.hour(
                                lapsing.first().toLocalTime().withSecond(0).withNano(0));
        return WaitingWork.of(
                        lapsing.number(),
                        lapsing.number() == 1 ? "Voter whose time ends today" : "Voters whose time ends today",
                        first,
                        hasTheQueue ? "Open Review" : "Record cure evidence",
                        hasTheQueue ? "review" : "intake/cure")
                .late(true);
    }

    private WaitingWork notices(ElectionLine election) {
        DueCount due = notices.count(election.id());
        return WaitingWork.of(
                        due.all(),
                        "Voters to notify",
                        due.overdue() == 0
                                ? "cure notices and outcomes"
                                : UsDates.count(due.overdue(), "letter") + " overdue",
                        "Open Notices",
                        "notices")
                .since(
                        due.oldest() == null || due.overdue() == 0
                                ? null
                                : due.oldest().atZone(election.zone()).toInstant())
                .late(due.overdue() > 0);
    }

    private WaitingWork toldAnother(ElectionId electionId) {
        int number = told.toldAnotherDate(electionId).size();
        return WaitingWork.of(
                        number,
                        number == 1 ? "Voter who was told another date" : "Voters who were told another date",
                        "the board's meeting was called or moved after their letter",
                        "Open Notices",
                        "notices")
                .late(true);
    }
}
