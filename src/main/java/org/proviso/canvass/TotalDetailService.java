package org.proviso.canvass;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.canvass.TotalDetail.Part;
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
import org.proviso.review.CaseService;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The bags, batches, envelopes and notes behind a total, so that a difference can be put right where it comes from. */
@Service
public class TotalDetailService {

    private static final int NAMED = 200;

    private final IntakeService intake;
    private final CaseService cases;
    private final DecisionService decisions;
    private final ElectionService elections;
    private final ReleaseFigures releases;
    private final NoticeFigures notices;
    private final FigureStore figures;
    private final StaffList staff;
    private final AccessService access;

    TotalDetailService(
            IntakeService intake,
            CaseService cases,
            DecisionService decisions,
            ElectionService elections,
            ReleaseFigures releases,
            NoticeFigures notices,
            FigureStore figures,
            StaffList staff,
            AccessService access) {
        this.intake = intake;
        this.cases = cases;
        this.decisions = decisions;
        this.elections = elections;
        this.releases = releases;
        this.notices = notices;
        this.figures = figures;
        this.staff = staff;
        this.access = access;
    }

    /** What is behind a total at a place. Of a county's total the envelopes of all its places. */
    @Transactional(readOnly = true)
    public TotalDetail behind(ElectionId electionId, CanvassPlace where, BalanceRule identity) {
        access.demand(Permission.CLOSE_ELECTION);
        List<CastEnvelope> here = intake.castEnvelopes(electionId).stream()
                .filter(envelope ->
                        where.isCounty() || CanvassPlace.nameOf(envelope).equals(where.name()))
                .toList();
        List<Part> parts = switch (identity) {
            case STOCK, ISSUED_ARRIVED, SENT_BACK_ARRIVED, SEALS, NOTHING_LOOSE, LOCATIONS ->
                arrived(electionId, where, here);
            case ISSUE_REASONS -> List.of(withoutReason(here));
            case EVERY_ONE_HAS_AN_OUTCOME, STATES, NOTHING_PENDING, REJECTION_REASONS -> undecided(electionId, here);
            case BALLOTS, TABULATOR, REMAKES -> batches(electionId);
            case CREDIT -> List.of(counted(electionId, here));
            case ASKS -> asks(electionId);
            case OUTCOMES_TOLD -> told(electionId);
        };
        List<Part> all = new ArrayList<>(parts);
        all.add(notes(electionId, where, identity));
        return new TotalDetail(
                all.stream().filter(part -> !part.lines().isEmpty()).toList());
    }

    private List<Part> arrived(ElectionId electionId, CanvassPlace where, List<CastEnvelope> here) {
        List<String> bags = intake.transmittals(electionId).stream()
                .filter(sent -> where.isCounty() || sent.votingLocation().equals(where.name()))
                .map(sent -> (where.isCounty() ? sent.votingLocation() + ", " : "") + bag(sent))
                .toList();
        return List.of(part("Bags", bags), numbers("Envelopes received", here));
    }

    private static String bag(Transmittal sent) {
        String seals = sent.sealOut().equals(sent.sealIn())
                ? ", seal " + sent.sealOut()
                : ", out with seal " + sent.sealOut() + ", back with seal " + sent.sealIn();
        String loose =
                sent.looseBallots() == null || sent.looseBallots() == 0 ? "" : ", loose ballots " + sent.looseBallots();
        return "bag " + sent.bag() + seals + ": issued " + sent.issued() + ", sent back " + sent.returned() + loose;
    }

    private static Part withoutReason(List<CastEnvelope> here) {
        return numbers(
                "Envelopes without a reason issued",
                here.stream()
                        .filter(envelope -> envelope.issueReasons().isEmpty())
                        .toList());
    }

    private List<Part> undecided(ElectionId electionId, List<CastEnvelope> here) {
        Election election = elections.find(electionId).orElseThrow();
        Set<EnvelopeNumber> known = new HashSet<>();
        Set<EnvelopeNumber> undecided = new HashSet<>();
        for (EnvelopeCase envelopeCase : cases.all(electionId)) {
            EnvelopeNumber number = envelopeCase.key().envelopeNo();
            known.add(number);
            if (!envelopeCase.state().isOver()) {
                undecided.add(number);
            }
        }
        Map<EnvelopeNumber, Decision> standing = decisions.standing(electionId);
        Predicate<CastEnvelope> isHeld = envelope -> EnvelopeCounter.isHeld(envelope.envelopeNo(), election);
        return List.of(
                numbers(
                        "Undecided envelopes",
                        some(here, envelope -> undecided.contains(envelope.envelopeNo()) && !isHeld.test(envelope))),
                numbers(
                        "Undecided envelopes held by a court",
                        some(here, envelope -> undecided.contains(envelope.envelopeNo()) && isHeld.test(envelope))),
                numbers("Envelopes without a case", some(here, envelope -> !known.contains(envelope.envelopeNo()))),
                numbers(
                        "Envelopes rejected without a reason",
                        some(here, envelope -> isWithoutReason(standing, envelope.envelopeNo()))));
    }

    private static boolean isWithoutReason(Map<EnvelopeNumber, Decision> standing, EnvelopeNumber number) {
        Decision decision = standing.get(number);
        return decision != null
                && decision.as() == DecisionOutcome.REJECT
                && decision.reasons().isEmpty();
    }

    private static List<CastEnvelope> some(List<CastEnvelope> here, Predicate<CastEnvelope> which) {
        return here.stream().filter(which).toList();
    }

    private List<Part> batches(ElectionId electionId) {
        List<String> lines = releases.batches(electionId).stream()
                .filter(batch -> batch.dissolvedAt() == null)
                .map(TotalDetailService::batch)
                .toList();
        return List.of(part("Batches", lines));
    }

    private static String batch(Batch batch) {
        String envelopes = "batch " + batch.number() + ": " + batch.envelopes() + " envelopes";
        if (batch.openedAt() == null) {
            return envelopes + ", not open yet";
        }
        return envelopes + ", " + batch.empty() + " empty, " + batch.ballots() + " ballots, "
                + (batch.handedOffAt() == null ? "not handed off yet" : "handed off");
    }

    private Part counted(ElectionId electionId, List<CastEnvelope> here) {
        Map<EnvelopeNumber, Decision> standing = decisions.standing(electionId);
        return numbers(
                "Envelopes counted in full or in part",
                some(here, envelope -> counts(standing, envelope.envelopeNo())));
    }

    private static boolean counts(Map<EnvelopeNumber, Decision> standing, EnvelopeNumber number) {
        Decision decision = standing.get(number);
        return decision != null && decision.as() != DecisionOutcome.REJECT;
    }

    private List<Part> asks(ElectionId electionId) {
        Set<EnvelopeNumber> asked = new HashSet<>(notices.asked(electionId));
        Set<EnvelopeNumber> curable = new HashSet<>(figures.cureDefects(electionId));
        return List.of(
                words("Envelopes with a defect the voter may cure, and no notice", without(curable, asked)),
                words("Envelopes with a notice to cure, and no defect", without(asked, curable)));
    }

    private List<Part> told(ElectionId electionId) {
        Set<EnvelopeNumber> told = new HashSet<>(notices.outcomes(electionId));
        Set<EnvelopeNumber> toTell = new HashSet<>();
        decisions.standing(electionId).forEach((number, decision) -> {
            if (decision.as() != DecisionOutcome.COUNT) {
                toTell.add(number);
            }
        });
        return List.of(
                words("Envelopes rejected or counted in part, and no notice", without(toTell, told)),
                words("Envelopes with a notice of the outcome, and no such decision", without(told, toTell)));
    }

    private static Stream<String> without(Set<EnvelopeNumber> all, Set<EnvelopeNumber> others) {
        return all.stream().filter(number -> !others.contains(number)).sorted().map(EnvelopeNumber::value);
    }

    /** What people noted of its figures, and where from; the newest last. */
    private Part notes(ElectionId electionId, CanvassPlace where, BalanceRule identity) {
        List<Figure> noted = identity.toBeNoted();
        List<String> lines = figures.notes(electionId, where).stream()
                .filter(note -> noted.contains(note.figure()))
                .map(note -> note.figure().words(note.number()) + ": " + note.because() + " ("
                        + staff.user(note.notedBy())
                                .map(OfficeUser::fullName)
                                .orElse(note.notedBy().value())
                        + ")")
                .toList();
        return part("Figures recorded by people, the newest last", lines);
    }

    private static Part numbers(String heading, Collection<CastEnvelope> envelopes) {
        return words(
                heading,
                envelopes.stream().map(CastEnvelope::envelopeNo).sorted().map(EnvelopeNumber::value));
    }

    /** Envelope numbers on one line, as many as can be read. */
    private static Part words(String heading, Stream<String> numbers) {
        List<String> all = numbers.toList();
        if (all.isEmpty()) {
            return new Part(heading, List.of(), 0);
        }
        String line = String.join(", ", all.subList(0, Math.min(NAMED, all.size())));
        return new Part(heading + " (" + all.size() + ")", List.of(line), Math.max(0, all.size() - NAMED));
    }

    private static Part part(String heading, List<String> lines) {
        return new Part(heading, lines.subList(0, Math.min(NAMED, lines.size())), Math.max(0, lines.size() - NAMED));
    }
}
