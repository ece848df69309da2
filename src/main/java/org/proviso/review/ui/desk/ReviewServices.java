package org.proviso.review.ui.desk;

import org.proviso.access.AccessService;
import org.proviso.review.acts.AdministrativeEndService;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ClearCaseService;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.NoteService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.SearchService;
import org.proviso.review.acts.VoterGroupService;
import org.proviso.review.decide.CourtOrderSettlementService;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.file.HistoryService;
import org.proviso.review.find.FindService;
import org.springframework.stereotype.Component;

/** The services that a case page acts through. */
@Component
public record ReviewServices(
        AccessService access,
        CaseAssignmentService cases,
        LinkService links,
        SearchService searches,
        AnswerService answers,
        VoterGroupService groups,
        ResearchService research,
        NoteService notes,
        ProposalService proposals,
        ClearCaseService clear,
        AdministrativeEndService endings,
        EndedCaseService ended,
        CourtOrderSettlementService ordered,
        FindService find,
        HistoryService history) {}
