package org.proviso.core.adjudication;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.facts.Comparison;
import org.proviso.core.adjudication.facts.Eligibility;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.Registration;
import org.proviso.core.adjudication.facts.ResidenceFact;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Given;
import org.proviso.core.rules.Rules;

/**
 * Turns one envelope with its link into the facts of the case, from whatever holds the office's records. What the
 * records cannot tell stays unknown.
 */
public final class FactFinder {

    /** Facts that tell of the linked voter: without a settled link they are nobody's. */
    static final Set<Fact<?>> OF_THE_VOTER = Set.of(
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
     * The facts as they stand: what the records say of a voter counts only once a person has settled the link, so
     * that nobody's ballot falls on the record of somebody else.
     */
    public CaseFacts settled(Envelope envelope, Link link) {
        return settled(envelope, link, presumed(envelope, link));
    }

    /** The same from the facts over the presumed link, where they are at hand. */
    CaseFacts settled(Envelope envelope, Link link, CaseFacts all) {
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
        Cures cures = cures(envelope);
        Located located = records.locate(envelope.affirmation().residence());
        found.keep(PaperFacts.of(envelope, records.election(), cures));
        found.put(Fact.IDENTITY, identity(link));
        found.put(Fact.RESIDENCE, residence(located));
        found.put(Fact.REGISTRATION, registration(link, voter));
        found.put(Fact.IDENTIFICATION, IdentificationFacts.of(envelope, voter, book, cures));
        BallotFacts.Found ballot = BallotFacts.of(records, envelope, located, voter, book);
        found.keep(ballot.findings());
        if (voter.isPresent()) {
            found.keep(PriorVoteFacts.of(records, envelope, voter.get()));
            found.put(Fact.ELIGIBILITY, eligibility(voter.get()));
            found.put(Fact.SIGNATURE_COMPARISON, Comparison.NOT_YET);
        } else {
            found.put(Fact.OTHER_COUNTY, PriorVoteFacts.otherCounty(records, envelope, voter));
        }
        recorded(envelope, found.findings());
        return new CaseFacts(Map.copyOf(found.findings()), ballot.contests());
    }

    private void recorded(Envelope envelope, Map<Fact<?>, Finding> findings) {
        for (Recorded one : records.recorded(envelope.envelopeNo())) {
            findings.put(one.fact(), new Finding(one.words(), List.of(one.evidence())));
        }
        Finding compared = findings.getOrDefault(Fact.SIGNATURE_COMPARISON, Finding.UNKNOWN);
        if (compared.says(Comparison.DIFFERS_BY_TWO)) {
            findings.put(Fact.SIGNATURE_COMPARISON, confirmedByVoter(envelope, compared));
        }
    }

    /** A voter may still confirm in time that a signature found different is theirs. */
    private Finding confirmedByVoter(Envelope envelope, Finding differs) {
        return cures(envelope)
                .weigh(Ask.SIGNATURE_DIFFERENCE, differs, Comparison.CONFIRMED_BY_VOTER, Comparison.DIFFERS_BY_TWO);
    }

    private Cures cures(Envelope envelope) {
        return new Cures(records.cureEvidence(envelope.envelopeNo()), book, records.noticesSent(envelope.envelopeNo()));
    }

    private static Finding identity(Link link) {
        return new Finding(
                Set.of(link.identity()),
                link.likeness().stream()
                        .map(words -> Evidence.of(Source.MATCH, words))
                        .toList());
    }

    private Finding registration(Link link, Optional<Voter> voter) {
        Given needed = book.pack().of(Rules.REGISTRATION_NEEDED);
        if (needed.isKnown() && !needed.isYes()) {
            return Finding.of(Registration.NONE_NEEDED);
        }
        if (voter.isPresent()) {
            return RegistrationFacts.of(voter.get(), book);
        }
        return switch (link.identity()) {
            case NONE_FITS ->
                Finding.of(Registration.NOT_IN_FILE, Evidence.of(Source.ROLL, "The roll has no record that fits."));
            case NOT_ON_ROLL -> Finding.of(Registration.NOT_FOUND_AFTER_SEARCH);
            default -> Finding.UNKNOWN;
        };
    }

    private static Finding residence(Located located) {
        Evidence words = Evidence.of(Source.STREET_FILE, located.words());
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
                        Eligibility.NOT_OF_AGE,
                        Evidence.of(Source.ROLL, "Born " + Words.date(born) + ": under 18 on election day."))
                : Finding.of(Eligibility.NOTHING_KNOWN);
    }
}
