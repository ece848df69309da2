package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.ID;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BoardMotion;
import org.proviso.board.SessionKey;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassPlace;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.ClosingReport;
import org.proviso.canvass.Figure;
import org.proviso.canvass.PlaceFigures;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.intake.RecordedTransmittal;
import org.proviso.journey.chance.Attempt.Version;
import org.proviso.journey.chance.Play.Ended;
import org.proviso.release.Batch;
import org.proviso.release.RemakeSheet;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.decide.ContradictedDecision;

/**
 * Does line by line what the page of what is missing says, until the election is closed. It knows nothing but that page
 * and what whoever does a line sees on theirs. Where a day's work changes nothing, it waits for the next day.
 */
final class ClosingRobot {

    private static final int DAYS = 40;
    private static final int LET_STAND_AFTER = 20;

    private final ChanceOffice office;
    private final ChanceActs acts;
    private final Play play;
    private final Random random = new Random(1);
    private int day;

    ClosingRobot(ChanceOffice office, ChanceActs acts, Play play) {
        this.office = office;
        this.acts = acts;
        this.play = play;
    }

    void close() {
        if (isClosed()) {
            return;
        }
        play.note("the robot begins: "
                + report().missing().stream().map(ClosingLine::words).toList());
        while (!play.isWrong() && !report().isEmpty()) {
            List<ClosingLine> before = report().missing();
            before.forEach(this::work);
            List<ClosingLine> after = report().missing();
            if (day >= DAYS) {
                play.fail("the election cannot be closed: " + after);
            } else if (!after.isEmpty()) {
                day++;
                play.perform(acts.other.passed(24));
            }
        }
        if (!play.isWrong() && play.perform(acts.other.electionClosed("dora")) != Ended.ACCEPTED) {
            play.fail("nothing is missing, and the election cannot be closed");
        }
    }

    private boolean isClosed() {
        return office.the(org.proviso.election.ElectionService.class).isClosed(ID);
    }

    private ClosingReport report() {
        return office.read("carl", () -> office.the(CanvassService.class).missing(ID));
    }

    private void work(ClosingLine line) {
        if (play.isWrong()) {
            return;
        }
        switch (line.step()) {
            case RETURN -> line.which().forEach(place -> play.perform(acts.intake.returned("jon", place)));
            case KEY -> cases(CaseState.RECEIVED);
            case REVIEW -> cases(CaseState.OPEN);
            case FINISH_REVIEW -> cases(CaseState.IN_REVIEW);
            case SECOND_REVIEW -> cases(CaseState.PROPOSED);
            case OTHER_BALLOTS -> play.perform(acts.release.othersDone("carl"));
            case DECIDE -> meet();
            case FOLLOW_UP -> followUp();
            case KEPT_CLOSED -> courtLetsGo();
            case BATCH -> batch();
            case OPEN -> acts.release.batches().forEach(this::open);
            case COPY -> acts.release.batches().forEach(this::copy);
            case HAND_OFF -> acts.release.batches().forEach(this::handOff);
            case FIGURE -> figures();
            case TOTAL -> totals();
            case SIGN -> sign();
            default -> play.fail("nobody can do " + line.words());
        }
    }

    /**
     * What can still be decided anew is reopened, and after some days the decision is let stand; of what cannot be decided
     * anew somebody writes down what was done.
     */
    private void followUp() {
        for (ContradictedDecision found : acts.board.contradicted()) {
            if (!play.isWrong()) {
                Attempt<?> next = day > LET_STAND_AFTER && found.isTheDeciders()
                        ? acts.board.letStand("eve", found)
                        : acts.board.followedUp("eve", found);
                play.perform(next);
            }
        }
    }

    /** Everybody goes on with each of these as far as it goes today. */
    private void cases(CaseState state) {
        for (EnvelopeCase found : office.in(state)) {
            EnvelopeCase now = found;
            for (int step = 0; step < 12 && !play.isWrong(); step++) {
                Optional<Attempt<?>> next = acts.sensible.next(random, now, day > 16);
                CaseState before = now.state();
                Ended ended = next.isEmpty() ? Ended.REFUSED : play.perform(next.get());
                if (ended == Ended.REFUSED) {
                    endsLater(now);
                    break;
                }
                now = office.now(found.key());
                if (before == CaseState.IN_REVIEW && now.state() == CaseState.OPEN) {
                    break;
                }
            }
        }
    }

    /** A session in which everything that is ready is put to the vote; what cannot be voted on goes back to review. */
    private void meet() {
        Set<EnvelopeNumber> notToday = new TreeSet<>();
        for (int step = 0; step < 300 && !play.isWrong(); step++) {
            boolean left = office.in(CaseState.READY).stream()
                    .anyMatch(found -> !notToday.contains(found.key().envelopeNo()));
            if (!left) {
                break;
            }
            Ended ended = acts.sensible
                    .forTheBoard(random, notToday)
                    .map(play::perform)
                    .orElse(Ended.REFUSED);
            if (ended == Ended.REFUSED || ended == Ended.STALE) {
                takeOff(notToday);
            }
        }
        closeSessions();
        office.in(CaseState.READY).stream()
                .filter(found -> notToday.contains(found.key().envelopeNo()))
                .forEach(found -> play.perform(acts.board.sentBack("eve", found, new Version(found.version(), false))));
    }

    /** The motion on the floor cannot be voted on: it is withdrawn, or the first group is left alone. */
    private void takeOff(Set<EnvelopeNumber> notToday) {
        if (office.election().decider() == DeciderKind.OFFICIAL) {
            office.in(CaseState.READY).stream()
                    .map(found -> found.key().envelopeNo())
                    .filter(number -> !notToday.contains(number))
                    .findFirst()
                    .ifPresent(notToday::add);
            return;
        }
        acts.board.sessions().forEach(session -> {
            Optional<BoardMotion> pending = acts.board.pending(session.key());
            if (pending.isPresent()) {
                List<EnvelopeNumber> about = play.refusedFor();
                play.perform(acts.board.withdrawn(
                        "eve", pending.get(), new Version(pending.get().version(), false)));
                notToday.addAll(about.isEmpty() ? pending.get().putNos() : about);
                pullOut(session.key(), about);
            } else {
                acts.board.groups(session.key()).stream()
                        .filter(group -> group.stream()
                                .noneMatch(line -> notToday.contains(line.item().envelopeNo())))
                        .findFirst()
                        .ifPresent(group ->
                                group.forEach(line -> notToday.add(line.item().envelopeNo())));
            }
        });
    }

    private void pullOut(SessionKey session, List<EnvelopeNumber> some) {
        acts.board.agenda(session).stream()
                .filter(line ->
                        some.contains(line.item().envelopeNo()) && !line.item().standsAlone())
                .forEach(line -> play.perform(acts.board.pulledOut(
                        "eve", session, line, new Version(line.item().version(), false))));
    }

    private void closeSessions() {
        acts.board.sessions().stream()
                .filter(session -> session.isOpen())
                .forEach(session ->
                        play.perform(acts.board.closed("eve", session, new Version(session.version(), false))));
    }

    private void courtLetsGo() {
        setAside(order ->
                EnumSet.of(CourtOrder.Kind.HOLD, CourtOrder.Kind.PRESERVE).contains(order.kind()));
    }

    /** Where a court's order keeps an envelope from being sent on, or its case from being closed without a decision. */
    private void endsLater(EnvelopeCase found) {
        EnvelopeNumber number = found.key().envelopeNo();
        Recommendation says =
                office.the(AssessmentService.class).now(found.key()).recommendation();
        if (says != Recommendation.SENT_ON && says != Recommendation.ADMINISTRATIVE_END) {
            return;
        }
        setAside(order -> order.settles(number) || order.keepsClosed(number));
    }

    private void setAside(Predicate<CourtOrder> which) {
        for (RecordedCourtOrder order : acts.other.orders()) {
            if (order.order().binds() && which.test(order.order())) {
                play.perform(acts.other.changed(
                        "carl", order, new Version(order.version(), false), CourtOrder.Status.SET_ASIDE));
            }
        }
    }

    private void batch() {
        play.perform(acts.release.othersDone("carl"));
        Map<Boolean, Set<EnvelopeNumber>> groups = new TreeMap<>();
        acts.release
                .waiting()
                .forEach(one -> groups.computeIfAbsent(one.decision().ballot().heldApart(), any -> new TreeSet<>())
                        .add(one.key().envelopeNo()));
        groups.values()
                .forEach(group ->
                        play.perform(acts.release.made("hal", group, group.size() == 1 ? "It is the last one." : "")));
    }

    private Batch again(Batch batch) {
        return acts.release.batches().stream()
                .filter(one -> one.number() == batch.number())
                .findFirst()
                .orElseThrow();
    }

    private static Version seen(Batch batch) {
        return new Version(batch.version(), false);
    }

    private static String other(@Nullable Object first) {
        return String.valueOf(first).equals("hal") ? "ida" : "hal";
    }

    private void open(Batch found) {
        if (!found.isClosed() || found.envelopes() == 0) {
            return;
        }
        if (found.dissolveAskedBy() != null) {
            play.perform(acts.release.kept("hal", found, seen(found)));
        }
        for (EnvelopeNumber number : acts.release.stopped(again(found))) {
            Batch now = again(found);
            play.perform(acts.release.takenOut("hal", now, seen(now), number));
        }
        Batch now = again(found);
        if (now.envelopes() == 1 && now.aloneBecause().isBlank() && now.firstOpener() == null) {
            play.perform(acts.release.askedToDissolve("hal", now, seen(now)));
            Batch asked = again(found);
            play.perform(acts.release.dissolved("ida", asked, seen(asked)));
            return;
        }
        if (now.envelopes() > 0 && now.firstOpener() == null) {
            play.perform(acts.release.begun("hal", now, seen(now)));
        }
        Batch begun = again(found);
        if (begun.firstOpener() != null) {
            play.perform(acts.release.opened(other(begun.firstOpener()), begun, seen(begun), 0));
        }
    }

    private void copy(Batch batch) {
        for (RemakeSheet sheet : acts.release.sheets(batch)) {
            if (batch.openedAt() != null && sheet.firstCopier() == null) {
                play.perform(acts.release.copied("hal", sheet, new Version(sheet.version(), false)));
            }
        }
        for (RemakeSheet sheet : acts.release.sheets(batch)) {
            if (batch.openedAt() != null && sheet.firstCopier() != null && sheet.remadeAt() == null) {
                play.perform(
                        acts.release.remade(other(sheet.firstCopier()), sheet, new Version(sheet.version(), false)));
            }
        }
    }

    private void handOff(Batch batch) {
        if (batch.openedAt() != null && batch.handedOffAt() == null) {
            play.perform(acts.release.handedOff("ida", batch, seen(batch), batch.ballots()));
        }
    }

    private void note(CanvassPlace place, Figure figure, int number) {
        play.perform(acts.other.noted("carl", place.name(), place.hours(), figure, number));
    }

    /** Figures that only people can tell: counted by hand, and found to be as they must be. */
    private void figures() {
        for (BalanceResult balance : report().open()) {
            if (balance instanceof BalanceResult.CannotBeChecked unchecked) {
                for (Figure figure : unchecked.missing()) {
                    note(unchecked.where(), figure, really(unchecked.where(), figure));
                }
            }
        }
    }

    private PlaceFigures at(CanvassPlace place) {
        CanvassFigures accounts = acts.other.accounts().stream()
                .filter(one -> one.hours() == place.hours())
                .findFirst()
                .orElseThrow();
        return place.isCounty()
                ? accounts.county()
                : Objects.requireNonNull(accounts.locations().get(place.name()), "a place has its figures");
    }

    private int really(CanvassPlace place, Figure figure) {
        PlaceFigures figures = at(place);
        return switch (figure) {
            case SUPPLIED, ISSUED, SENT_BACK -> number(figures, Figure.RECEIVED);
            case TABULATED -> number(figures, Figure.HANDED_OFF);
            case CREDITED -> number(figures, Figure.COUNTED) + number(figures, Figure.COUNTED_IN_PART);
            default -> 0;
        };
    }

    private static int number(PlaceFigures figures, Figure figure) {
        return figures.figures().getOrDefault(figure, 0);
    }

    /** Differences are looked into: first what still lies in the bags, then what was written down wrong. */
    private void totals() {
        List<EnvelopeNumber> inBags = office.notReceived();
        if (!inBags.isEmpty()) {
            inBags.forEach(number -> play.perform(acts.intake.received("jon", number)));
            return;
        }
        for (BalanceResult balance : report().open()) {
            if (balance instanceof BalanceResult.Differs differs) {
                clearUp(differs);
            }
        }
    }

    private void clearUp(BalanceResult.Differs differs) {
        CanvassPlace place = differs.where();
        PlaceFigures figures = at(place);
        switch (differs.identity()) {
            case STOCK, ISSUED_ARRIVED, SENT_BACK_ARRIVED -> arrivals(place, figures);
            case TABULATOR -> note(place, Figure.TABULATED, really(place, Figure.TABULATED));
            case CREDIT -> note(place, Figure.CREDITED, really(place, Figure.CREDITED));
            case NOTHING_PENDING -> heldByLaw(place, figures);
            default -> play.perform(acts.other.explained("carl", differs));
        }
    }

    private void sign() {
        acts.other.explanations().stream()
                .filter(one -> !one.isSigned())
                .forEach(one -> play.perform(acts.other.signed(
                        one.writtenBy().value().equals("dora") ? "carl" : "dora",
                        one,
                        new Version(one.version(), false))));
    }

    /** Where nobody has anything left to decide, what is undecided is what must be held. */
    private void heldByLaw(CanvassPlace place, PlaceFigures figures) {
        boolean nothingLeft = report().missing().stream()
                .noneMatch(line -> line.step().compareTo(ClosingStep.KEY) >= 0
                        && line.step().compareTo(ClosingStep.DECIDE) <= 0);
        if (nothingLeft) {
            note(place, Figure.HELD_BY_LAW, number(figures, Figure.PENDING));
        }
    }

    /** The return is counted again; what was noted of the place is noted as it is. */
    private void arrivals(CanvassPlace place, PlaceFigures figures) {
        int received = number(figures, Figure.RECEIVED);
        Optional<RecordedTransmittal> sent = acts.intake.returns().stream()
                .filter(one -> one.transmittal().votingLocation().equals(place.name()))
                .findFirst();
        if (sent.isPresent()) {
            RecordedTransmittal wrong = sent.get();
            int loose = Objects.requireNonNullElse(wrong.transmittal().looseBallots(), 0);
            play.perform(acts.intake.corrected("jon", wrong, new Version(wrong.version(), false), received, loose));
        }
        for (Figure figure : List.of(Figure.SUPPLIED, Figure.ISSUED, Figure.SENT_BACK)) {
            note(place, figure, received);
        }
        for (Figure figure :
                List.of(Figure.SPOILED, Figure.UNUSED, Figure.MISSING, Figure.UNACCOUNTED, Figure.SCANNED_IN_ERROR)) {
            note(place, figure, 0);
        }
    }
}
