package org.proviso.board.ui;

import org.proviso.access.AccessService;
import org.proviso.board.BoardService;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.agenda.ReadyService;
import org.proviso.board.motion.MotionService;
import org.proviso.board.motion.OfficialService;
import org.proviso.board.motion.RecordKeepingService;
import org.proviso.board.motion.VoteConfirmationService;
import org.proviso.board.record.PublicDisplayService;
import org.proviso.board.record.SessionDetailsService;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.FollowUpService;
import org.proviso.review.ends.EndedCaseService;
import org.springframework.stereotype.Component;

/** The services that the pages of the board call. */
@Component
record BoardServices(
        BoardService sessions,
        AgendaService agendas,
        MotionService motions,
        RecordKeepingService records,
        VoteConfirmationService confirmations,
        SessionDetailsService meetings,
        ReadyService ready,
        OfficialService officials,
        DecidedCaseService decisions,
        FollowUpService followUps,
        EndedCaseService ended,
        PublicDisplayService display,
        AccessService access) {}
