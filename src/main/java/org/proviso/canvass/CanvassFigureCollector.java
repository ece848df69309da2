package org.proviso.canvass;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.election.ElectionService;
import org.proviso.intake.CastEnvelope;
import org.proviso.intake.IntakeService;
import org.proviso.notices.NoticeFigures;
import org.proviso.release.Batch;
import org.proviso.release.ReleaseFigures;
import org.proviso.release.RemakeSheet;
import org.proviso.review.CaseService;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Component;

/** Gathers the figures of an election from the rooms that have them, each group of hours apart. */
@Component
class CanvassFigureCollector {

    private final ElectionService elections;
    private final IntakeService intake;
    private final CaseService cases;
    private final DecisionService decisions;
    private final ReleaseFigures releases;
    private final NoticeFigures notices;
    private final FigureStore figures;

    CanvassFigureCollector(
            ElectionService elections,
            IntakeService intake,
            CaseService cases,
            DecisionService decisions,
            ReleaseFigures releases,
            NoticeFigures notices,
            FigureStore figures) {
        this.elections = elections;
        this.intake = intake;
        this.cases = cases;
        this.decisions = decisions;
        this.releases = releases;
        this.notices = notices;
        this.figures = figures;
    }

    /** What the rooms say of an election, each asked once. */
    private record Entries(
            List<CastEnvelope> envelopes,
            List<EnvelopeCase> cases,
            Map<EnvelopeNumber, Decision> standing,
            Election election,
            List<String> expected,
            List<Transmittal> returns,
            List<FigureStore.NotedFigure> noted,
            List<Batch> batches,
            Map<Integer, List<RemakeSheet>> sheets,
            List<EnvelopeNumber> cureDefects,
            List<EnvelopeNumber> asked,
            List<EnvelopeNumber> outcomes) {

        /** Whether there are two groups of hours to tell apart. */
        boolean both() {
            return envelopes.stream().anyMatch(this::isExtended);
        }

        /**
         * A ballot that counts is kept apart, opened and handed off as its decision says; of all others the envelope's own
         * mark is all there is.
         */
        boolean isExtended(CastEnvelope envelope) {
            Decision decision = standing.get(envelope.envelopeNo());
            if (decision == null || decision.as() == DecisionOutcome.REJECT) {
                return envelope.inExtendedHours();
            }
            return decision.ballot().heldApart();
        }

        List<CastEnvelope> of(VotingHours hours) {
            return envelopes.stream()
                    .filter(envelope -> isExtended(envelope) == (hours == VotingHours.EXTENDED))
                    .toList();
        }
    }

    /** The accounts of regular hours, and of court-extended ones where an envelope was cast in them. */
    List<CanvassFigures> collect(ElectionId electionId) {
        Entries entries = new Entries(
                intake.castEnvelopes(electionId),
                cases.all(electionId),
                decisions.standing(electionId),
                elections.find(electionId).orElseThrow(),
                elections.ballots(electionId).votingLocations(),
                intake.transmittals(electionId),
                figures.noted(electionId),
                releases.batches(electionId),
                releases.sheets(electionId),
                figures.cureDefects(electionId),
                notices.asked(electionId),
                notices.outcomes(electionId));
        List<CanvassFigures> accounts = new ArrayList<>();
        accounts.add(accounts(VotingHours.REGULAR, entries));
        if (entries.both()) {
            accounts.add(accounts(VotingHours.EXTENDED, entries));
        }
        return accounts;
    }

    private static CanvassFigures accounts(VotingHours hours, Entries entries) {
        List<CastEnvelope> envelopes = entries.of(hours);
        EnvelopeCounter keeper = new EnvelopeCounter();
        keeper.envelopes(envelopes);
        keeper.cases(entries.cases(), entries.standing(), entries.election());
        if (hours == VotingHours.REGULAR) {
            keeper.expected(entries.expected());
            keeper.incidents(entries.returns());
            keeper.transmittals(entries.returns().stream()
                    .filter(transmittal -> !entries.both() || !hasExtended(transmittal, entries))
                    .toList());
        }
        Map<Figure, Integer> county = county(hours, numbers(envelopes), entries);
        for (FigureStore.NotedFigure noted : entries.noted()) {
            if (noted.hours() == hours) {
                note(noted, keeper, county);
            }
        }
        return new CanvassFigures(hours, keeper.places(), new PlaceFigures(county));
    }

    /** A return counts both groups together: where there are both, a person has to tell them apart. */
    private static boolean hasExtended(Transmittal transmittal, Entries entries) {
        return entries.of(VotingHours.EXTENDED).stream()
                .anyMatch(envelope -> envelope.votingLocation().equals(transmittal.votingLocation()));
    }

    private static void note(FigureStore.NotedFigure noted, EnvelopeCounter keeper, Map<Figure, Integer> county) {
        if (noted.place().equals(CanvassService.COUNTY)) {
            county.put(noted.figure(), noted.number());
        } else {
            keeper.noted(noted.place(), noted.figure(), noted.number());
        }
    }

    private static Set<EnvelopeNumber> numbers(List<CastEnvelope> envelopes) {
        return envelopes.stream().map(CastEnvelope::envelopeNo).collect(Collectors.toSet());
    }

    private static Map<Figure, Integer> county(VotingHours hours, Set<EnvelopeNumber> envelopes, Entries entries) {
        boolean both = entries.both();
        Map<Figure, Integer> county = new EnumMap<>(Figure.class);
        county.put(Figure.RECEIVED, envelopes.size());
        List<Batch> batches = entries.batches().stream()
                .filter(batch -> !both || batch.heldApart() == (hours == VotingHours.EXTENDED))
                .toList();
        county.put(
                Figure.EMPTY,
                batches.stream()
                        .map(Batch::empty)
                        .filter(Objects::nonNull)
                        .mapToInt(Integer::intValue)
                        .sum());
        county.put(
                Figure.HANDED_OFF,
                batches.stream()
                        .filter(batch -> batch.handedOffAt() != null)
                        .mapToInt(Batch::ballots)
                        .sum());
        county.put(
                Figure.REMADE,
                batches.stream()
                        .flatMap(batch -> entries.sheets().getOrDefault(batch.number(), List.of()).stream())
                        .filter(sheet -> sheet.remadeAt() != null)
                        .mapToInt(RemakeSheet::ballots)
                        .sum());
        county.put(Figure.CURE_DEFECTS, common(envelopes, entries.cureDefects()));
        county.put(Figure.ASK_NOTICES, common(envelopes, entries.asked()));
        county.put(Figure.OUTCOME_NOTICES, (int)
                entries.outcomes().stream().filter(envelopes::contains).count());
        return county;
    }

    private static int common(Set<EnvelopeNumber> envelopes, Collection<EnvelopeNumber> some) {
        Set<EnvelopeNumber> both = new HashSet<>(envelopes);
        // A set of the others too: in a list each number would be looked for from its beginning.
        both.retainAll(new HashSet<>(some));
        return both.size();
    }
}
