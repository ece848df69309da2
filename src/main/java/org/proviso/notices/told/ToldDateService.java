package org.proviso.notices.told;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesService;
import org.proviso.intake.IntakeService;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Who was told another date than the board's meeting, so that the office can tell them again. It is about envelopes that
 * are not decided, for which the voter has brought nothing yet.
 */
@Service
public class ToldDateService {

    private final ToldDateStore told;
    private final RulesService rules;
    private final ElectionService elections;
    private final IntakeService intake;
    private final DecisionService decisions;
    private final AccessService access;

    ToldDateService(
            ToldDateStore told,
            RulesService rules,
            ElectionService elections,
            IntakeService intake,
            DecisionService decisions,
            AccessService access) {
        this.told = told;
        this.rules = rules;
        this.elections = elections;
        this.intake = intake;
        this.decisions = decisions;
        this.access = access;
    }

    /** Those who were told a later date than the meeting first; nobody where nothing runs to the meeting. */
    @Transactional(readOnly = true)
    public List<ToldDate> toldAnotherDate(ElectionId electionId) {
        access.demand(Permission.PRINT_CURE_LETTERS);
        DeadlineBook book = rules.book(electionId);
        if (!book.needsTheMeeting()) {
            return List.of();
        }
        Set<EnvelopeNumber> decided = decisions.standing(electionId).keySet();
        return told.newest(electionId).stream()
                .filter(told -> book.runsToTheMeeting(told.ask()))
                .filter(told -> !decided.contains(told.key().envelopeNo()))
                .map(told -> new ToldDate(
                        told.key(),
                        told.noticeNo(),
                        told.ask(),
                        told.toldUntil(),
                        book.cure(told.ask(), null).map(Deadline::lastMoment).orElse(null)))
                .filter(told -> !told.told().equals(told.meeting()))
                .filter(told -> !hasBrought(told))
                .sorted(Comparator.comparing(told -> !told.isLaterThanTheMeeting()))
                .toList();
    }

    private boolean hasBrought(ToldDate told) {
        ElectionId electionId = told.key().electionId();
        return intake.cureEvidence(electionId, told.key().envelopeNo(), elections.zone(electionId)).stream()
                .anyMatch(cure -> cure.ask() == told.ask());
    }
}
