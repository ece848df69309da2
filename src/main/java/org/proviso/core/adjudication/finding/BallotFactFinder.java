package org.proviso.core.adjudication.finding;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.BallotStyle;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.facts.BallotFact;
import org.proviso.core.adjudication.facts.EntitlementFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.LateExcuseFact;
import org.proviso.core.adjudication.facts.PartyBallotFact;
import org.proviso.core.adjudication.facts.PlaceFact;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/**
 * Was the ballot of a style this voter may vote? In vote centers any style may be printed anywhere, so the style cast
 * decides, not the precinct of casting.
 */
final class BallotFactFinder {

    /** The findings, and the contests in play where the right style is known. */
    record Found(Map<Fact<?>, Finding> findings, @Nullable BallotContests contests) {}

    private final Records records;
    private final Envelope envelope;
    private final Optional<Voter> voter;
    private final DeadlineBook book;
    private final FindingMap found = new FindingMap();

    private BallotFactFinder(Records records, Envelope envelope, Optional<Voter> voter, DeadlineBook book) {
        this.records = records;
        this.envelope = envelope;
        this.voter = voter;
        this.book = book;
    }

    static Found findFacts(
            Records records, Envelope envelope, LocatedAddress located, Optional<Voter> voter, DeadlineBook book) {
        return new BallotFactFinder(records, envelope, voter, book).find(located);
    }

    private Found find(LocatedAddress located) {
        EligiblePrecinctParts right = EligiblePrecinctParts.findEligible(records, envelope, located, voter, book);
        List<PrecinctPart> rows = rows(right);
        String castStyle = envelope.cast().ballotStyle();
        Optional<BallotStyle> cast = records.style(castStyle);
        party(cast);
        entitlement();
        if (rows.isEmpty() || cast.isEmpty()) {
            found.put(Fact.BALLOT, new Finding(null, right.evidence()));
            found.put(Fact.PLACE, new Finding(null, List.of()));
            return new Found(found.findings(), null);
        }
        BallotContests contests = closest(rows, cast.get());
        place(rows, contests);
        lateExcuse();
        found.put(Fact.BALLOT, style(rows, castStyle, contests, right.evidence()));
        return new Found(found.findings(), contests);
    }

    /** The rows of the right parts for the party ballot that was cast, or those open to all. */
    private List<PrecinctPart> rows(EligiblePrecinctParts right) {
        List<PrecinctPart> rows = new ArrayList<>();
        for (PrecinctId part : right.parts()) {
            List<PrecinctPart> all = records.rows(part);
            List<PrecinctPart> ofParty = all.stream()
                    .filter(row -> row.party().equals(partyOfBallot()))
                    .toList();
            rows.addAll(ofParty.isEmpty() ? all : ofParty);
        }
        return rows;
    }

    private String partyOfBallot() {
        String party = envelope.cast().partyBallot();
        return party.isEmpty()
                ? records.style(envelope.cast().ballotStyle())
                        .map(BallotStyle::party)
                        .orElse("")
                : party;
    }

    private Finding style(
            List<PrecinctPart> rows, String castStyle, BallotContests contests, List<Evidence> partEvidence) {
        Set<String> styles = new LinkedHashSet<>();
        rows.forEach(row -> styles.add(row.ballotStyle()));
        List<Evidence> evidence = new ArrayList<>(partEvidence);
        String own = "style " + String.join(" or ", styles);
        if (styles.contains(castStyle)) {
            evidence.add(
                    Evidence.of(EvidenceSource.ENVELOPE, "The ballot cast is " + own + ", the voter's own style."));
            return new Finding(Set.of(BallotFact.RIGHT_STYLE), evidence);
        }
        Set<String> shared = new LinkedHashSet<>(contests.cast());
        shared.retainAll(contests.right());
        evidence.add(Evidence.of(
                EvidenceSource.ENVELOPE,
                "The ballot cast is style " + castStyle + "; the voter's own is " + own + ". The voter may vote "
                        + shared.size() + " of the " + contests.cast().size() + " contests on it."));
        return new Finding(Set.of(BallotFact.OTHER_STYLE), evidence);
    }

    /** Of several right styles the one that shares most with the ballot cast: the law leaves the choice to the voter. */
    private BallotContests closest(List<PrecinctPart> rows, BallotStyle cast) {
        Set<String> federal = records.federalContests();
        BallotContests best = new BallotContests(cast.contestIds(), Set.of(), federal);
        int most = -1;
        for (PrecinctPart row : rows) {
            Set<String> right = records.style(row.ballotStyle())
                    .map(BallotStyle::contestIds)
                    .orElse(Set.of());
            Set<String> shared = new LinkedHashSet<>(right);
            shared.retainAll(cast.contestIds());
            if (shared.size() > most) {
                most = shared.size();
                best = new BallotContests(cast.contestIds(), right, federal);
            }
        }
        return best;
    }

    private void place(List<PrecinctPart> rows, BallotContests contests) {
        String cast = envelope.cast().votingLocation();
        boolean told = rows.stream().noneMatch(row -> row.votingLocation().isEmpty());
        if (!told || cast.isEmpty()) {
            found.put(Fact.PLACE, new Finding(null, List.of()));
            return;
        }
        boolean own = rows.stream().anyMatch(row -> row.votingLocation().equals(cast));
        found.put(Fact.PLACE, own ? PlaceFact.OWN_PLACE : otherPlace(contests));
    }

    /** Another congressional district shows in the federal contests of the two ballots. */
    private static PlaceFact otherPlace(BallotContests contests) {
        Set<String> cast = new LinkedHashSet<>(contests.cast());
        Set<String> right = new LinkedHashSet<>(contests.right());
        cast.retainAll(contests.federal());
        right.retainAll(contests.federal());
        return cast.equals(right) ? PlaceFact.OTHER_PLACE : PlaceFact.OTHER_DISTRICT;
    }

    /** Before the hour that the law names no reason excuses; from then on a person reads what was sworn. */
    private void lateExcuse() {
        LocalDateTime at = envelope.cast().at();
        if (book.pack().of(StateRules.LATE_EXCUSE_AFTER).value() instanceof RuleValue.Time hour
                && at != null
                && at.toLocalTime().isBefore(hour.time())) {
            found.put(
                    Fact.LATE_EXCUSE,
                    LateExcuseFact.NOT_SWORN,
                    EvidenceSource.ENVELOPE,
                    "Cast at " + DateWords.hour(at) + ", before the time from which a sworn reason excuses it.");
        }
    }

    private void entitlement() {
        if (voter.isEmpty()) {
            return;
        }
        EntitlementFact word =
                EntitlementFact.valueOf(voter.get().registration().entitlement().name());
        if (word == EntitlementFact.FULL) {
            found.put(Fact.ENTITLEMENT, word);
        } else {
            found.put(Fact.ENTITLEMENT, word, EvidenceSource.ROLL, "Registered for federal contests only.");
        }
    }

    private void party(Optional<BallotStyle> cast) {
        String ballot = cast.map(BallotStyle::party).orElse(envelope.cast().partyBallot());
        if (records.election().kind() != Election.Kind.PRIMARY || ballot.isEmpty()) {
            found.put(Fact.PARTY_BALLOT, PartyBallotFact.NONE);
        } else if (voter.isPresent()) {
            found.put(Fact.PARTY_BALLOT, primary(ballot, voter.get().party()));
        }
    }

    private Finding primary(String ballot, String party) {
        String words = "A " + ballot + " ballot was cast; the roll lists the voter "
                + (party.isEmpty() ? "with no party" : "as " + party) + ".";
        boolean open = switch (book.pack().word(Rules.PRIMARY)) {
            case "every_voter" -> true;
            case "own_party_or_unaffiliated" -> party.isEmpty();
            default -> false;
        };
        if (book.pack().word(Rules.PRIMARY).equals("parties_decide") && !party.equals(ballot)) {
            return Finding.unknown(Evidence.of(
                    EvidenceSource.ROLL,
                    words + " Each party decides who may vote its ballot; a reviewer must check."));
        }
        boolean own = party.equals(ballot) || open;
        boolean ruled = book.pack().of(Rules.PRIMARY).isFirm();
        return own || ruled
                ? Finding.of(own ? PartyBallotFact.OWN : PartyBallotFact.OTHER, Evidence.of(EvidenceSource.ROLL, words))
                : Finding.unknown(Evidence.of(
                        EvidenceSource.ROLL,
                        words + " No source says whether this is allowed; the office must sign a county ruling."));
    }
}
