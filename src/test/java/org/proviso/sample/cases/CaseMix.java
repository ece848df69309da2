package org.proviso.sample.cases;

import java.util.List;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.TrueOutcome;

/** How many envelopes of each kind the two elections have. */
public final class CaseMix {

    private final EnvelopeDesk desk;
    private final OrderCases order;
    private final MoveCases moves;
    private final WrongBallotCases ballots;
    private final MailCases mail;
    private final CheckInCases checkIns;
    private final TableCases table;
    private final RegistrationCases registration;
    private final StrangerCases strangers;
    private final KinCases kin;

    public CaseMix(EnvelopeDesk desk) {
        this.desk = desk;
        this.order = new OrderCases(desk);
        this.moves = new MoveCases(desk);
        this.ballots = new WrongBallotCases(desk);
        this.mail = new MailCases(desk);
        this.checkIns = new CheckInCases(desk);
        this.table = new TableCases(desk);
        this.registration = new RegistrationCases(desk);
        this.strangers = new StrangerCases(desk);
        this.kin = new KinCases(desk);
    }

    /** The general election: 240 envelopes. */
    public void general() {
        kin.twins(2);
        kin.seniorAndJunior(2);
        kin.childOfSameName(2);
        kin.eitherOfTwo(1);
        kin.twice(2);
        generalInOrder();
        generalPlaces();
        generalRecords();
        generalTable();
        generalRegistration();
        combinations();
    }

    private void generalInOrder() {
        order.plain(29);
        order.inactive(8);
        order.confidential(4);
        order.officialDidNotSign(3);
        order.officialErred(3);
        order.condition("feels_empty", 2);
        order.condition("torn", 1);
        order.placeholderBirthDate(3);
        order.emptyBox("date_of_birth", "left_blank", 2);
        order.emptyBox("date_of_birth", "illegible", 1);
        order.emptyBox("date_of_birth", "refused", 1);
        order.emptyBox("residence_address_line", "left_blank", 1);
        order.emptyBox("residence_address_line", "illegible", 1);
        order.challenged(2);
    }

    private void generalPlaces() {
        moves.early(6);
        moves.late(4);
        moves.dayNotGiven(4);
        moves.withinPart(3);
        moves.earlyWithOldBallot(3);
        moves.lateWithNewBallot(3);
        ballots.wrongPlace(9);
        ballots.otherSplit(6);
        ballots.smaller(1);
        ballots.federalOnly(2, 1);
    }

    private void generalRecords() {
        mail.outstanding(5);
        mail.surrendered(4);
        mail.ended("rejected", 2);
        mail.ended("late", 2);
        mail.ended("void", 2);
        mail.ended("undeliverable", 1);
        mail.reissued("outstanding", TrueOutcome.COUNT, 2);
        mail.accepted(8);
        mail.reissued("accepted", TrueOutcome.REJECT, 2);
        mail.returned(3);
        checkIns.reallyVoted(1);
        checkIns.wrongLineTicked(1);
        checkIns.cancelled(3);
    }

    private void generalTable() {
        table.noId(19);
        table.impediment(3);
        table.mailWithoutId(2);
        table.unsigned(8);
        table.mark(true);
        table.mark(false);
        table.anotherHand(3);
        table.ended("withdrawn");
        table.ended("spoiled");
    }

    private void generalRegistration() {
        registration.late(3, 7);
        registration.onTheLastDay();
        registration.pending(5);
        registration.cancelled(6);
        strangers.notOnRoll(14);
        strangers.ofNeighborCounty(4);
        strangers.votedElsewhere(1, 5);
    }

    private void combinations() {
        DraftEnvelope wrongToo =
                desk.ordinary("no_id_and_wrong_style", TrueOutcome.WAIT).because("wrong_place");
        ballots.miscast(wrongToo.withoutId(), part -> true);
        wrongToo.contests = List.of();
        DraftEnvelope votedToo =
                desk.ordinary("mail_accepted_and_no_id", TrueOutcome.REJECT).because("mail_ballot_issued");
        mail.accepted(votedToo.withoutId());
        registration.late(false).unsigned().note("unsigned as well");
        registration.pending().withoutId().note("no identification as well");
        desk.ordinary("unsigned_and_no_id", TrueOutcome.WAIT).unsigned().withoutId();
    }

    /** The closed primary: 60 envelopes. */
    public void primary() {
        PrimaryCases primary = new PrimaryCases(desk);
        kin.twins(1);
        kin.twice(1);
        desk.times(11, () -> primary.extendedHours(TrueOutcome.COUNT));
        primary.extendedHours(TrueOutcome.WAIT).withoutId();
        primary.afterExtendedClose();
        primary.inLineAtClose(2);
        primary.otherParty(3);
        primary.partyBallotWithoutParty(2);
        primaryRest();
    }

    private void primaryRest() {
        order.plain(3);
        order.inactive(1);
        order.confidential(1);
        order.placeholderBirthDate(1);
        moves.early(1);
        moves.late(1);
        moves.dayNotGiven(1);
        ballots.wrongPlace(3);
        ballots.otherSplit(2);
        mail.outstanding(1);
        mail.surrendered(1);
        mail.accepted(2);
        table.noId(3);
        table.impediment(1);
        table.unsigned(2);
        table.anotherHand(1);
        registration.late(1, 1);
        registration.onTheLastDay();
        registration.pending(1);
        registration.cancelled(1);
        strangers.notOnRoll(3);
        strangers.ofNeighborCounty(1);
        table.ended("withdrawn");
    }
}
