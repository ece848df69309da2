package org.proviso.notices;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.PrecinctPart;
import org.proviso.core.adjudication.finding.LocatedAddress;
import org.proviso.core.calendar.Deadline;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesService;
import org.proviso.intake.IntakeService;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Component;

/** Composes letters from the envelope, the decision that stands and the rules in force. */
@Component
class LetterComposer {

    private final DecisionService decisions;
    private final ElectionService elections;
    private final RulesService rules;
    private final IntakeService intake;
    private final AddresseeFinder addressees;

    LetterComposer(
            DecisionService decisions,
            ElectionService elections,
            RulesService rules,
            IntakeService intake,
            AddresseeFinder addressees) {
        this.decisions = decisions;
        this.elections = elections;
        this.rules = rules;
        this.intake = intake;
        this.addressees = addressees;
    }

    /** The letter as it goes out at that moment, on the county's clock. */
    Letter write(Notice notice, LocalDateTime sending) {
        ElectionId electionId = notice.key().electionId();
        Election election = elections.find(electionId).orElseThrow();
        Envelope envelope =
                intake.envelope(electionId, notice.key().envelopeNo()).orElseThrow();
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(LetterParts.about(election, envelope.receiptNo()));
        String subject;
        boolean formComes = false;
        if (notice.kind() == NoticeKind.ASK) {
            subject = CureLetter.SUBJECT;
            paragraphs.addAll(CureLetter.paragraphs(notice, election, until(notice, sending), rules.book(electionId)));
        } else {
            OutcomeLetter outcome = outcome(notice, election, envelope);
            subject = outcome.subject();
            paragraphs.addAll(outcome.paragraphs());
            formComes = outcome.formComes();
        }
        Addressee to = addressees.of(electionId, envelope);
        return new Letter(
                election.office(),
                LetterParts.from(election),
                to.mailTo(),
                subject,
                List.copyOf(paragraphs),
                to.language(),
                formComes);
    }

    /** Until when the voter may act on an ask; where that counts from the notice, from its first sending. */
    Optional<Deadline> until(Notice notice, LocalDateTime sending) {
        LocalDateTime known = notice.sentAt();
        LocalDateTime first = known != null && known.isBefore(sending) ? known : sending;
        return rules.book(notice.key().electionId()).cure(notice.asked(), first);
    }

    /** The date that a notice going out at that moment gives; null where it gives none. */
    @Nullable
    LocalDateTime toldUntil(Notice notice, LocalDateTime sending) {
        return notice.kind() == NoticeKind.ASK
                ? until(notice, sending).map(Deadline::lastMoment).orElse(null)
                : null;
    }

    private OutcomeLetter outcome(Notice notice, Election election, Envelope envelope) {
        Decision decision = decisions
                .standing(notice.key())
                .filter(standing -> notice.isOf(standing))
                .orElseThrow(() -> new IllegalArgumentException("The decision of this notice was set aside."));
        return new OutcomeLetter(
                decision,
                election,
                rules.book(election.id()).pack(),
                elections.ballots(election.id()),
                votingLocation(election.id(), envelope.affirmation().residence()));
    }

    private String votingLocation(ElectionId electionId, Address residence) {
        LocatedAddress located = elections.addresses(electionId).locate(residence);
        return !located.isOnly()
                ? ""
                : elections.ballots(electionId).rows(located.parts().get(0)).stream()
                        .map(PrecinctPart::votingLocation)
                        .filter(location -> !location.isBlank())
                        .findFirst()
                        .orElse("");
    }
}
