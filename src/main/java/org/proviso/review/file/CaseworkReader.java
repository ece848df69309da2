package org.proviso.review.file;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.proviso.access.OfficeUser;
import org.proviso.access.StaffList;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.election.RulesService;
import org.proviso.review.ProposalStore;
import org.proviso.review.assess.SecondLooks;
import org.proviso.review.ends.CountyReceiptStore;
import org.proviso.review.ends.EndProposal;
import org.proviso.review.ends.EndProposalStore;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.CaseNoteStore;
import org.proviso.review.facts.ResearchStore;
import org.proviso.review.mail.MailDeskWork;
import org.springframework.stereotype.Component;

/** What people did with a case so far, as one of them may read it. */
@Component
class CaseworkReader {

    /**
     * Who reads, whether the case must not tell them what the first reviewer found in its signature, and whether the signature is
     * hidden.
     */
    record Known(OfficeUser reader, boolean blind, boolean signatureHidden) {}

    private final AnswerStore answers;
    private final ResearchStore research;
    private final CaseNoteStore notes;
    private final ProposalStore proposals;
    private final EndProposalStore ends;
    private final CountyReceiptStore receipts;
    private final RulesService rules;
    private final CaseFileStore store;
    private final StaffList staff;
    private final MailDeskWork mailDesk;

    CaseworkReader(
            AnswerStore answers,
            ResearchStore research,
            CaseNoteStore notes,
            ProposalStore proposals,
            EndProposalStore ends,
            CountyReceiptStore receipts,
            RulesService rules,
            CaseFileStore store,
            StaffList staff,
            MailDeskWork mailDesk) {
        this.answers = answers;
        this.research = research;
        this.notes = notes;
        this.proposals = proposals;
        this.ends = ends;
        this.receipts = receipts;
        this.rules = rules;
        this.store = store;
        this.staff = staff;
        this.mailDesk = mailDesk;
    }

    CaseFile.Casework of(EnvelopeKey key, Known known, ZoneId county) {
        return new CaseFile.Casework(
                known.blind() ? SecondLooks.beforeLooks(answers.standing(key)) : answers.standing(key),
                research.of(key),
                store.searches(key, county),
                store.cameBack(key, county),
                // A note may say what the first reviewer saw.
                known.blind() ? List.of() : notes.of(key),
                proposals
                        .newest(key)
                        .map(proposal -> store.proposed(proposal, known.reader().userName(), county)),
                new EndOfCase(
                        ends.newest(key).map(proposal -> proposed(proposal, known.reader(), county)),
                        receipts.standing(key)),
                store.decided(key, county),
                mailDesk.keptClosed(key),
                isStale(key),
                known.signatureHidden());
    }

    private EndOfCase.Proposed proposed(EndProposal proposal, OfficeUser reader, ZoneId county) {
        UserName readBy = proposal.readBy();
        return new EndOfCase.Proposed(
                proposal,
                name(proposal.proposedBy()),
                LocalDateTime.ofInstant(proposal.proposedAt(), county),
                proposal.proposedBy().equals(reader.userName()),
                readBy == null ? "" : name(readBy));
    }

    private String name(UserName userName) {
        return staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }

    private boolean isStale(EnvelopeKey key) {
        String now = rules.book(key.electionId()).pack().hash();
        return store.settledUnder(key).filter(hash -> !hash.equals(now)).isPresent();
    }
}
