package org.proviso.core.adjudication.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.CheckIn;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.adjudication.facts.OtherCountyFact;
import org.proviso.core.adjudication.facts.OtherEnvelopeFact;

/** Did this voter vote another way: by mail, at another location, in another county, in another envelope? */
final class PriorVoteFactFinder {

    private static final Comparator<Envelope> BY_TIME = Comparator.comparing(
                    (Envelope envelope) -> envelope.cast().at(), Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(Envelope::envelopeNo);

    private final Records records;
    private final Envelope envelope;
    private final Voter voter;
    private final FindingMap found = new FindingMap();

    private PriorVoteFactFinder(Records records, Envelope envelope, Voter voter) {
        this.records = records;
        this.envelope = envelope;
        this.voter = voter;
    }

    static Map<Fact<?>, Finding> findFacts(Records records, Envelope envelope, Voter voter) {
        PriorVoteFactFinder facts = new PriorVoteFactFinder(records, envelope, voter);
        facts.mailBallots();
        facts.checkIns();
        facts.otherEnvelopes();
        facts.found.put(Fact.OTHER_COUNTY, otherCounty(records, envelope, Optional.of(voter)));
        return facts.found.findings();
    }

    private void mailBallots() {
        Set<MailBallotFact> words = EnumSet.noneOf(MailBallotFact.class);
        List<Evidence> evidence = new ArrayList<>();
        for (MailBallot ballot : records.mailBallots(voter.voterId())) {
            MailBallotFact word = word(ballot);
            words.add(word);
            evidence.add(Evidence.of(
                    EvidenceSource.MAIL_BALLOT_RECORD,
                    "Mail ballot" + (ballot.serial().isEmpty() ? "" : " " + ballot.serial()) + " sent"
                            + (ballot.issuedOn() == null ? "" : " " + DateWords.date(ballot.issuedOn())) + ": "
                            + word.meaning()
                            + (ballot.stateOn() == null || word == MailBallotFact.OUTSTANDING
                                    ? "."
                                    : " (" + DateWords.date(ballot.stateOn()) + ").")));
        }
        if (words.isEmpty()) {
            evidence.add(Evidence.of(EvidenceSource.MAIL_BALLOT_RECORD, "No mail ballot was sent to this voter."));
        }
        found.put(Fact.MAIL_BALLOTS, new Finding(words, evidence));
    }

    /** A ballot given up at the table is not outstanding any more, even if the mail desk has not heard of it. */
    private MailBallotFact word(MailBallot ballot) {
        boolean givenUp = envelope.handling().mailBallotSurrendered().isYes();
        return ballot.state() == MailBallot.State.OUTSTANDING && givenUp
                ? MailBallotFact.SURRENDERED
                : MailBallotFact.valueOf(ballot.state().name());
    }

    private void checkIns() {
        List<Evidence> evidence = new ArrayList<>();
        boolean unseen = false;
        for (CheckIn checkIn : records.checkIns(voter.voterId())) {
            boolean gaveBallot = checkIn.cancelledAt() == null
                    && checkIn.kind() == CheckIn.Kind.REGULAR
                    && !checkIn.ballotIssued().isNo();
            unseen |= gaveBallot;
            evidence.add(Evidence.of(EvidenceSource.POLL_BOOK, describe(checkIn)));
        }
        found.put(
                Fact.CHECK_IN,
                Finding.of(
                        unseen ? CheckInFact.ELSEWHERE_UNSEEN : CheckInFact.NONE, evidence.toArray(Evidence[]::new)));
    }

    private static String describe(CheckIn checkIn) {
        String words = "Checked in at " + checkIn.votingLocation() + ", " + DateWords.moment(checkIn.at());
        if (checkIn.cancelledAt() != null) {
            return words + "; cancelled at " + DateWords.hour(checkIn.cancelledAt()) + ".";
        }
        if (checkIn.kind() == CheckIn.Kind.PROVISIONAL) {
            return words + ", for a provisional ballot.";
        }
        return words
                + switch (checkIn.ballotIssued()) {
                    case YES -> "; a regular ballot was issued.";
                    case NO -> "; no ballot was issued.";
                    case UNKNOWN -> "; the poll book does not say whether a ballot was issued.";
                };
    }

    private void otherEnvelopes() {
        List<Envelope> others = records.envelopesOf(voter.voterId()).stream()
                .filter(other -> !other.envelopeNo().equals(envelope.envelopeNo()))
                .filter(other -> other.handling().condition() != Envelope.Condition.WITHDRAWN
                        && other.handling().condition() != Envelope.Condition.SPOILED)
                .sorted(BY_TIME)
                .toList();
        if (others.isEmpty()) {
            found.put(Fact.OTHER_ENVELOPE, OtherEnvelopeFact.NONE);
            return;
        }
        Envelope first = others.get(0);
        boolean earlier = BY_TIME.compare(first, envelope) < 0;
        found.put(
                Fact.OTHER_ENVELOPE,
                earlier ? OtherEnvelopeFact.EARLIER_PENDING : OtherEnvelopeFact.LATER_PENDING,
                EvidenceSource.OTHER_ENVELOPES,
                "The same voter cast envelope " + first.envelopeNo() + " at "
                        + first.cast().votingLocation() + ", "
                        + DateWords.moment(first.cast().at()) + ".");
    }

    static Finding otherCounty(Records records, Envelope envelope, Optional<Voter> voter) {
        List<VotedElsewhere> lines = records.votedElsewhere(envelope, voter);
        if (lines.isEmpty()) {
            return Finding.of(OtherCountyFact.NOT_LISTED);
        }
        Evidence[] evidence = lines.stream()
                .map(line -> Evidence.of(
                        EvidenceSource.STATE_LIST,
                        "The state lists " + line.name().listed() + ", born " + DateWords.date(line.birthDate())
                                + ", as having voted in " + line.county()
                                + (line.on() == null ? "" : " on " + DateWords.date(line.on())) + "."))
                .toArray(Evidence[]::new);
        boolean inFull = voter.isPresent() && lines.stream().anyMatch(line -> agreesInFull(line, voter.get()));
        return Finding.of(inFull ? OtherCountyFact.LISTED_IN_FULL : OtherCountyFact.LISTED, evidence);
    }

    private static boolean agreesInFull(VotedElsewhere line, Voter voter) {
        boolean sameNumber = (!line.idLast4().isEmpty() && line.idLast4().equals(voter.idLast4()))
                || (!line.driversLicense().isEmpty() && line.driversLicense().equals(voter.driversLicense()));
        return sameNumber
                && line.name().last().equalsIgnoreCase(voter.name().last())
                && line.name().first().equalsIgnoreCase(voter.name().first())
                && line.birthDate() != null
                && line.birthDate().equals(voter.birthDate());
    }
}
