package org.proviso.canvass;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.proviso.core.Election;
import org.proviso.core.Transmittal;
import org.proviso.election.ElectionService;
import org.proviso.intake.CastEnvelope;
import org.proviso.intake.IntakeService;
import org.proviso.notices.NoticeCounts;
import org.proviso.notices.NoticeService;
import org.proviso.release.Batch;
import org.proviso.release.ReleaseService;
import org.proviso.release.RemakeService;
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
    private final ReleaseService releases;
    private final RemakeService remakes;
    private final NoticeService notices;
    private final FigureStore figures;

    CanvassFigureCollector(
            ElectionService elections,
            IntakeService intake,
            CaseService cases,
            DecisionService decisions,
            ReleaseService releases,
            RemakeService remakes,
            NoticeService notices,
            FigureStore figures) {
        this.elections = elections;
        this.intake = intake;
        this.cases = cases;
        this.decisions = decisions;
        this.releases = releases;
        this.remakes = remakes;
        this.notices = notices;
        this.figures = figures;
    }

    /** The accounts of regular hours, and of court-extended ones where an envelope was cast in them. */
    List<CanvassFigures> collect(String electionId) {
        List<CastEnvelope> envelopes = intake.castEnvelopes(electionId);
        List<CanvassFigures> accounts = new ArrayList<>();
        boolean extended = envelopes.stream().anyMatch(CastEnvelope::inExtendedHours);
        accounts.add(accounts(electionId, VotingHours.REGULAR, envelopes, extended));
        if (extended) {
            accounts.add(accounts(electionId, VotingHours.EXTENDED, envelopes, true));
        }
        return accounts;
    }

    private CanvassFigures accounts(String id, VotingHours hours, List<CastEnvelope> all, boolean both) {
        Predicate<CastEnvelope> ofHours = envelope -> envelope.inExtendedHours() == (hours == VotingHours.EXTENDED);
        List<CastEnvelope> envelopes = all.stream().filter(ofHours).toList();
        Election election = elections.find(id).orElseThrow();
        List<EnvelopeCase> allCases = cases.all(id);
        Map<String, Decision> standing = decisions.standing(id);
        EnvelopeCounter keeper = new EnvelopeCounter();
        keeper.envelopes(envelopes);
        keeper.cases(allCases, standing, election);
        if (hours == VotingHours.REGULAR) {
            keeper.transmittals(intake.transmittals(id).stream()
                    .filter(one -> !both || !hasExtended(one, all))
                    .toList());
        }
        Map<Figure, Integer> county = county(id, hours, numbers(envelopes), both);
        for (FigureStore.NotedFigure noted : figures.noted(id)) {
            if (noted.hours() == hours) {
                note(noted, keeper, county);
            }
        }
        return new CanvassFigures(hours, keeper.places(), new PlaceFigures(county));
    }

    /** A return counts both groups together: where there are both, a person has to tell them apart. */
    private static boolean hasExtended(Transmittal one, List<CastEnvelope> all) {
        return all.stream()
                .anyMatch(envelope ->
                        envelope.inExtendedHours() && envelope.votingLocation().equals(one.votingLocation()));
    }

    private static void note(FigureStore.NotedFigure noted, EnvelopeCounter keeper, Map<Figure, Integer> county) {
        if (noted.place().equals(CanvassService.COUNTY)) {
            county.put(noted.figure(), noted.number());
        } else {
            keeper.noted(noted.place(), noted.figure(), noted.number());
        }
    }

    private static Set<String> numbers(List<CastEnvelope> envelopes) {
        return envelopes.stream().map(CastEnvelope::envelopeNo).collect(Collectors.toSet());
    }

    private Map<Figure, Integer> county(String id, VotingHours hours, Set<String> envelopes, boolean both) {
        Map<Figure, Integer> county = new EnumMap<>(Figure.class);
        county.put(Figure.RECEIVED, envelopes.size());
        List<Batch> batches = releases.batches(id).stream()
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
                        .flatMap(batch -> remakes.sheets(id, batch.number()).stream())
                        .filter(sheet -> sheet.remadeAt() != null)
                        .mapToInt(RemakeSheet::ballots)
                        .sum());
        county.put(Figure.CURE_DEFECTS, common(envelopes, figures.cureDefects(id)));
        NoticeCounts counts = notices.counts(id);
        NoticeCounts ofHours = both ? counts.ofGroup(hours == VotingHours.EXTENDED) : counts;
        county.put(Figure.ASK_NOTICES, ofHours.askEnvelopes());
        county.put(Figure.OUTCOME_NOTICES, ofHours.outcomes());
        return county;
    }

    private static int common(Set<String> envelopes, Collection<String> some) {
        Set<String> both = new HashSet<>(envelopes);
        both.retainAll(some);
        return both.size();
    }
}
