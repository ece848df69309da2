package org.proviso.review.ui.desk;

import org.proviso.access.AccessService;
import org.proviso.review.CaseService;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.ClearCaseService;
import org.proviso.review.acts.EndingService;
import org.proviso.review.acts.GroupService;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.SearchService;
import org.proviso.review.decide.OrderedService;
import org.proviso.review.file.HistoryService;
import org.proviso.review.find.FindService;
import org.springframework.stereotype.Component;

/** The services that a case page acts through. */
@Component
public record ReviewActs(
        AccessService access,
        CaseService cases,
        LinkService links,
        SearchService searches,
        AnswerService answers,
        GroupService groups,
        ResearchService research,
        ProposalService proposals,
        ClearCaseService clear,
        EndingService endings,
        OrderedService ordered,
        FindService find,
        HistoryService history) {}
