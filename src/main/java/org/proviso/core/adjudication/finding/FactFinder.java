package org.proviso.core.adjudication.finding;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.facts.EligibilityFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.RegistrationFact;
import org.proviso.core.adjudication.facts.ResidenceFact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rules;

/**
 * Turns one envelope with its link into the facts of the case, from whatever holds the office's records. What the
 * records cannot tell stays unknown.
 */
public final class FactFinder {

    /** Facts about the linked voter: without a settled link they belong to no one. */
    public static final Set<Fact<?>> OF_THE_VOTER = Set.of(
            Fact.REGISTRATION,
            Fact.MAIL_BALLOTS,
            Fact.CHECK_IN,
            Fact.OTHER_COUNTY,
            Fact.OTHER_ENVELOPE,
            Fact.BALLOT,
            Fact.PLACE,
            Fact.LATE_EXCUSE,
            Fact.ENTITLEMENT,
            Fact.PARTY_BALLOT,
            Fact.SIGNATURE_COMPARISON,
            Fact.ELIGIBILITY);

    private static final int VOTING_AGE = 18; // Amendment XXVI

    private final Records records;
    private final DeadlineBook book;

    public FactFinder(Records records, DeadlineBook book) {
        this.records = records;
        this.book = book;
    }

    /**
     * The facts as they stand, from those over the presumed link: what the records say of a voter counts only once a
     * person has settled the link, so that nobody's ballot falls on the record of somebody else.
     */
    public CaseFacts settled(Envelope envelope, Link link, CaseFacts all) {
        if (link.isSettled()) {
            return all;
        }
        Map<Fact<?>, Finding> kept = new LinkedHashMap<>(all.findings());
        kept.keySet().removeAll(OF_THE_VOTER);
        if (book.pack().word(Rules.ID_REQUIRED_OF).equals("first_time_mail")
                && !envelope.handling().idShown().isYes()) {
            kept.remove(Fact.IDENTIFICATION);
        }
        recorded(envelope, kept);
        return new CaseFacts(kept, null);
    }

    /** The facts over the presumed link, for the outlook and for the reader of a case. */
    public CaseFacts presumed(Envelope envelope, Link link) {
        Optional<Voter> voter = Optional.ofNullable(link.voterId()).flatMap(records::voter);
        FindingMap found = new FindingMap();
        CuresByStamp cures = cures(envelope);
        LocatedAddress located = records.locate(envelope.affirmation().residence());
        found.keep(PaperFactFinder.findFacts(envelope, records.election(), cures));
        found.put(Fact.IDENTITY, identity(link));
        found.put(Fact.RESIDENCE, residence(located));
        found.put(Fact.REGISTRATION, registration(link, voter));
        found.put(Fact.IDENTIFICATION, IdentificationFactFinder.findFacts(envelope, voter, book, cures));
        BallotFactFinder.Found ballot = BallotFactFinder.findFacts(records, envelope, located, voter, book);
        found.keep(ballot.findings());
        if (voter.isPresent()) {
            found.keep(PriorVoteFactFinder.findFacts(records, envelope, voter.get()));
            found.put(Fact.ELIGIBILITY, eligibility(voter.get()));
            found.put(Fact.SIGNATURE_COMPARISON, SignatureComparisonFact.NOT_YET);
        } else {
            found.put(Fact.OTHER_COUNTY, PriorVoteFactFinder.otherCounty(records, envelope, voter));
        }
        recorded(envelope, found.findings());
        return new CaseFacts(Map.copyOf(found.findings()), ballot.contests());
    }

    private void recorded(Envelope envelope, Map<Fact<?>, Finding> findings) {
        for (RecordedFact recordedFact : records.recorded(envelope.envelopeNo())) {
            findings.put(recordedFact.fact(), new Finding(recordedFact.words(), List.of(recordedFact.evidence())));
        }
        Finding compared = findings.getOrDefault(Fact.SIGNATURE_COMPARISON, Finding.UNKNOWN);
        if (compared.says(SignatureComparisonFact.DIFFERS_BY_TWO)) {
            findings.put(Fact.SIGNATURE_COMPARISON, confirmedByVoter(envelope, compared));
        }
    }

    /** A voter may still confirm in time that a signature found different is theirs. */
    private Finding confirmedByVoter(Envelope envelope, Finding differs) {
        return cures(envelope)
                .weigh(
                        Ask.SIGNATURE_DIFFERENCE,
                        differs,
                        SignatureComparisonFact.CONFIRMED_BY_VOTER,
                        SignatureComparisonFact.DIFFERS_BY_TWO);
    }

    private CuresByStamp cures(Envelope envelope) {
        return new CuresByStamp(
                records.cureEvidence(envelope.envelopeNo()), book, records.noticesSent(envelope.envelopeNo()));
    }

    private static Finding identity(Link link) {
        return new Finding(
                Set.of(link.identity()),
                link.likeness().stream()
                        .map(words -> Evidence.of(EvidenceSource.MATCH, words))
                        .toList());
    }

    private Finding registration(Link link, Optional<Voter> voter) {
        ResolvedRule needed = book.pack().of(Rules.REGISTRATION_NEEDED);
        if (needed.isKnown() && !needed.isYes()) {
            return Finding.of(RegistrationFact.NONE_NEEDED);
        }
        if (voter.isPresent()) {
            return RegistrationFactFinder.findFacts(voter.get(), book);
        }
        return switch (link.identity()) {
            case NONE_FITS ->
                Finding.of(
                        RegistrationFact.NOT_IN_FILE,
                        Evidence.of(EvidenceSource.ROLL, "No record on the roll matches."));
            case NOT_ON_ROLL -> Finding.of(RegistrationFact.NOT_FOUND_AFTER_SEARCH);
            default -> Finding.UNKNOWN;
        };
    }

    private static Finding residence(LocatedAddress located) {
        Evidence words = Evidence.of(EvidenceSource.STREET_FILE, located.words());
        return switch (located.place()) {
            case FOUND, IN_COUNTY_NOT_FOUND -> Finding.of(ResidenceFact.IN_COUNTY, words);
            case OUT_OF_COUNTY -> Finding.of(ResidenceFact.OUT_OF_COUNTY, words);
            case NO_ADDRESS -> Finding.unknown(words);
        };
    }

    private Finding eligibility(Voter voter) {
        LocalDate born = voter.birthDate();
        LocalDate election = records.election().date();
        boolean young = born != null && born.plusYears(VOTING_AGE).isAfter(election);
        return young
                ? Finding.of(
                        EligibilityFact.NOT_OF_AGE,
                        Evidence.of(
                                EvidenceSource.ROLL, "Born " + DateWords.date(born) + ": under 18 on election day."))
                : Finding.of(EligibilityFact.NOTHING_KNOWN);
    }
}
