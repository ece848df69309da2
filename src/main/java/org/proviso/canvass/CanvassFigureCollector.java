package org.proviso.canvass;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.proviso.canvass.outcomes.EnvelopeGroup;
import org.proviso.canvass.outcomes.EnvelopeGroups;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.notices.NoticeFigures;
import org.proviso.release.Batch;
import org.proviso.release.ReleaseFigures;
import org.proviso.release.RemakeSheet;
import org.springframework.stereotype.Component;

/** Gathers the figures of an election from the rooms that have them, each group of hours apart. */
@Component
class CanvassFigureCollector {

    private final ElectionService elections;
    private final EnvelopeGroups envelopes;
    private final IntakeService intake;
    private final ReleaseFigures releases;
    private final NoticeFigures notices;
    private final FigureStore figures;

    CanvassFigureCollector(
            ElectionService elections,
            EnvelopeGroups envelopes,
            IntakeService intake,
            ReleaseFigures releases,
            NoticeFigures notices,
            FigureStore figures) {
        this.elections = elections;
        this.envelopes = envelopes;
        this.intake = intake;
        this.releases = releases;
        this.notices = notices;
        this.figures = figures;
    }

    /** What the rooms say of an election, each asked once. */
    private record Entries(
            List<EnvelopeGroup> envelopes,
            List<String> expected,
            List<Transmittal> returns,
            List<FigureStore.NotedFigure> noted,
            List<Batch> batches,
            Map<Integer, List<RemakeSheet>> sheets,
            Map<VotingHours, Map<Figure, Integer>> told) {

        /** Whether there are two groups of hours to tell apart. */
        boolean both() {
            return envelopes.stream().anyMatch(EnvelopeGroup::extended);
        }

        List<EnvelopeGroup> of(VotingHours hours) {
            return envelopes.stream()
                    .filter(group -> group.extended() == (hours == VotingHours.EXTENDED))
                    .toList();
        }
    }

    /** The accounts of regular hours, and of court-extended ones where an envelope was cast in them. */
    List<CanvassFigures> collect(ElectionId electionId) {
        Election election = elections.find(electionId).orElseThrow();
        return collect(election, envelopes.of(election));
    }

    /** The same of envelopes at hand. */
    List<CanvassFigures> collect(Election election, List<EnvelopeGroup> all) {
        ElectionId electionId = election.id();
        Entries entries = new Entries(
                all,
                elections.ballots(electionId).votingLocations(),
                intake.transmittals(electionId),
                figures.noted(electionId),
                releases.batches(electionId),
                releases.sheets(electionId),
                told(election, all));
        List<CanvassFigures> accounts = new ArrayList<>();
        accounts.add(accounts(VotingHours.REGULAR, entries));
        if (entries.both()) {
            accounts.add(accounts(VotingHours.EXTENDED, entries));
        }
        return accounts;
    }

    /** Envelopes of which there is something to tell, and the notices of it. */
    private Map<VotingHours, Map<Figure, Integer>> told(Election election, List<EnvelopeGroup> all) {
        ElectionId electionId = election.id();
        Map<Figure, Integer> regular = new EnumMap<>(Figure.class);
        regular.put(Figure.CURE_DEFECTS, figures.cureDefectCount(electionId));
        regular.put(Figure.ASK_NOTICES, notices.askedCount(electionId));
        regular.put(Figure.OUTCOME_NOTICES, notices.outcomeCount(electionId));
        Map<Figure, Integer> extended = new EnumMap<>(Figure.class);
        if (all.stream().anyMatch(EnvelopeGroup::extended)) {
            Set<EnvelopeNumber> apart = Set.copyOf(envelopes.extended(election));
            extended.put(Figure.CURE_DEFECTS, common(apart, figures.cureDefects(electionId)));
            extended.put(Figure.ASK_NOTICES, common(apart, notices.asked(electionId)));
            extended.put(Figure.OUTCOME_NOTICES, common(apart, notices.outcomes(electionId)));
            extended.forEach((figure, number) -> regular.merge(figure, -number, Integer::sum));
        }
        return Map.of(VotingHours.REGULAR, regular, VotingHours.EXTENDED, extended);
    }

    private static CanvassFigures accounts(VotingHours hours, Entries entries) {
        List<EnvelopeGroup> envelopes = entries.of(hours);
        EnvelopeCounter keeper = new EnvelopeCounter();
        keeper.envelopes(envelopes);
        if (hours == VotingHours.REGULAR) {
            keeper.expected(entries.expected());
            keeper.incidents(entries.returns());
            keeper.transmittals(entries.returns().stream()
                    .filter(transmittal -> !entries.both() || !hasExtended(transmittal, entries))
                    .toList());
        }
        Map<Figure, Integer> county = county(hours, envelopes, entries);
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
                .anyMatch(group -> group.votingLocation().equals(transmittal.votingLocation()));
    }

    private static void note(FigureStore.NotedFigure noted, EnvelopeCounter keeper, Map<Figure, Integer> county) {
        if (noted.place().equals(CanvassService.COUNTY)) {
            county.put(noted.figure(), noted.number());
        } else {
            keeper.noted(noted.place(), noted.figure(), noted.number());
        }
    }

    private static Map<Figure, Integer> county(VotingHours hours, List<EnvelopeGroup> envelopes, Entries entries) {
        boolean both = entries.both();
        Map<Figure, Integer> county = new EnumMap<>(Figure.class);
        county.put(
                Figure.RECEIVED,
                envelopes.stream().mapToInt(EnvelopeGroup::number).sum());
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
        county.putAll(Objects.requireNonNull(entries.told().get(hours), "both groups of hours are counted"));
        return county;
    }

    private static int common(Set<EnvelopeNumber> envelopes, List<EnvelopeNumber> some) {
        return (int) some.stream().filter(envelopes::contains).count();
    }
}
