package org.proviso.board.ui;

import org.proviso.access.AccessService;
import org.proviso.board.AgendaService;
import org.proviso.board.BoardService;
import org.proviso.board.MeetingService;
import org.proviso.board.MotionService;
import org.proviso.board.OfficialService;
import org.proviso.board.ReadyService;
import org.proviso.board.RoomService;
import org.proviso.review.DecisionService;
import org.springframework.stereotype.Component;

/** The services that the pages of the board call. */
@Component
record BoardRoom(
        BoardService sessions,
        AgendaService agendas,
        MotionService motions,
        MeetingService meetings,
        ReadyService ready,
        OfficialService officials,
        DecisionService decisions,
        RoomService display,
        AccessService access) {}
