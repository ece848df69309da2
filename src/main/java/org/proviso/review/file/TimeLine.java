package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.proviso.core.CheckIn;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.MailBallot;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;

/** What the records say happened, in the order of time, with the deadlines that matter to the case. Not thread-safe. */
final class TimeLine {

    private final CaseReport report;
    private final Records records;
    private final List<TimeLineEvent> moments = new ArrayList<>();

    private TimeLine(CaseReport report, Records records) {
        this.report = report;
        this.records = records;
    }

    static List<TimeLineEvent> of(CaseReport report, Records records, DeadlineBook book) {
        TimeLine line = new TimeLine(report, records);
        report.voter().ifPresent(line::voter);
        line.moments.add(TimeLineEvent.envelope(
                report.envelope().cast().at(),
                "this envelope" + at(report.envelope().cast().votingLocation())));
        line.paper();
        line.deadlines(book);
        line.moments.sort(Comparator.comparing(TimeLineEvent::order));
        return List.copyOf(line.moments);
    }

    private static String at(String votingLocation) {
        return votingLocation.isEmpty() ? ", by mail" : ", " + votingLocation;
    }

    private void voter(Voter voter) {
        Voter.Registration registered = voter.registration();
        moments.add(TimeLineEvent.on(
                registered.registeredOn(),
                "registered, " + DateWords.code(registered.status().code())));
        List<MailBallot> ballots = records.mailBallots(voter.voterId());
        ballots.forEach(this::ballot);
        List<CheckIn> checkIns = records.checkIns(voter.voterId());
        checkIns.forEach(this::checkIn);
        if (checkIns.isEmpty()) {
            moments.add(TimeLineEvent.on(records.election().date(), "no check-in at any voting location"));
        }
        records.envelopesOf(voter.voterId()).stream()
                .filter(other -> !other.envelopeNo().equals(report.envelope().envelopeNo()))
                .forEach(this::other);
        records.votedElsewhere(report.envelope(), Optional.of(voter)).forEach(this::elsewhere);
    }

    private void ballot(MailBallot ballot) {
        String serial = ballot.serial().isEmpty() ? "" : " " + ballot.serial();
        moments.add(TimeLineEvent.on(ballot.issuedOn(), "mail ballot" + serial + " sent"));
        String now = switch (ballot.state()) {
            case OUTSTANDING -> "not returned";
            case SURRENDERED -> "surrendered";
            case CURE_PENDING -> "returned, waiting for cure";
            case UNDELIVERABLE -> "returned undeliverable";
            default -> ballot.state().code();
        };
        moments.add(TimeLineEvent.on(ballot.stateOn(), "mail ballot" + serial + " " + now));
    }

    private void checkIn(CheckIn checkIn) {
        String what = checkIn.kind() == CheckIn.Kind.PROVISIONAL
                ? "provisional ballot noted in the poll book"
                : checkIn.ballotIssued().isYes() ? "checked in, ballot issued" : "checked in, no ballot noted";
        String cancelled = checkIn.cancelledAt() == null ? "" : "; canceled";
        moments.add(TimeLineEvent.at(checkIn.at(), what + ", " + checkIn.votingLocation() + cancelled));
    }

    private void other(Envelope other) {
        LocalDateTime at = other.cast().at();
        String words = "envelope " + other.envelopeNo() + at(other.cast().votingLocation());
        moments.add(at == null ? TimeLineEvent.on(null, words) : TimeLineEvent.at(at, words));
    }

    private void elsewhere(VotedElsewhere line) {
        moments.add(TimeLineEvent.on(
                line.on(),
                "state list: a similar voter voted in " + line.county() + ", " + DateWords.code(line.how())));
    }

    private void paper() {
        EnvelopeNumber number = report.envelope().envelopeNo();
        records.cureEvidence(number)
                .forEach(cure ->
                        moments.add(TimeLineEvent.at(cure.receivedAt(), "cure evidence received: " + cure.words())));
        records.noticesSent(number)
                .forEach((ask, at) -> moments.add(TimeLineEvent.at(at, "notice sent: the voter may " + ask.words())));
    }

    private void deadlines(DeadlineBook book) {
        boolean mail = report.voter()
                .map(voter -> !records.mailBallots(voter.voterId()).isEmpty())
                .orElse(false);
        if (mail) {
            book.of(Rules.MAIL_RECEIPT)
                    .ifPresent(by -> moments.add(
                            TimeLineEvent.deadline(by.lastMoment(), "deadline for mail ballots to arrive")));
        }
        report.asks().forEach(this::ask);
    }

    private void ask(DueAsk ask) {
        ask.deadline()
                .ifPresent(by -> moments.add(TimeLineEvent.deadline(
                        by.lastMoment(),
                        "deadline for the voter to " + ask.ask().words())));
    }
}
