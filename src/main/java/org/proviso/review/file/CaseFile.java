package org.proviso.review.file;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.explain.LawLine;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.election.orders.CourtOrderScan;
import org.proviso.intake.cure.CureScan;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.CaseNote;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.RecordedAnswer;
import org.proviso.review.facts.ResearchRequest;

/** Everything about one case as a page shows it, at one moment. */
public record CaseFile(
        EnvelopeCase now,
        Assignment holding,
        CaseReport report,
        List<LawLine> law,
        SurroundingRecords around,
        Casework work,
        List<RecordedCourtOrder> orders) {

    /** Whether the law protects the address of whoever the voter is, or is presumed to be. */
    public boolean isProtected() {
        return report.voter().map(Voter::confidential).orElse(false);
    }

    /** A protected address is shown once a person has settled whose envelope it is. */
    public boolean showsProtectedAddress() {
        return isProtected() && report.link().isSettled();
    }

    /** Who has the case (full name, empty where nobody), since when, local to the county; whether whoever looks does. */
    public record Assignment(String by, Optional<LocalDateTime> since, boolean yours) {}

    /**
     * What the records around the envelope say. {@code choice} is who settled the voter. {@code others} are further envelopes of the same voter. {@code decideBy} is the last moment
     * for decisions.
     */
    public record SurroundingRecords(
            List<PossibleVoter> voters,
            Optional<Choice> choice,
            List<TimeLineEvent> timeLine,
            List<CaseAddress> homes,
            List<EnvelopeCase> others,
            Optional<ContestsAtStake> stake,
            Optional<LocalDateTime> decideBy,
            Pictures pictures,
            LocalDateTime asOf,
            ZoneId county) {}

    /** Who settled whose envelope it is (full name), when (county time), and the ground typed; empty where none was needed. */
    public record Choice(String by, LocalDateTime at, String ground) {}

    /**
     * Which pictures there are: of the envelope's own signature, how many signatures on file of whoever it is presumed to be, and
     * scans of what the voter brought, and of the election's court orders.
     */
    public record Pictures(boolean ofEnvelope, int onFile, List<CureScan> brought, List<CourtOrderScan> orders) {

        /** Where only signatures are looked at. */
        public Pictures(boolean ofEnvelope, int onFile) {
            this(ofEnvelope, onFile, List.of(), List.of());
        }
    }

    /** Why the case came back, by whom (empty: the program) and when, local to the county. */
    public record ReturnDetails(CaseReturn.Kind kind, String because, String by, LocalDateTime at) {}

    /**
     * What people did with it so far, the newest return first. {@code rulesChangedSince}: it was settled under rules that are
     * not in force any more; the signature is hidden while the law wants a first look that knows no name; where nobody is
     * presumed to be the voter, it helps to choose one and is shown.
     */
    public record Casework(
            List<RecordedAnswer> answers,
            List<ResearchRequest> requests,
            List<SearchSummary> searches,
            List<ReturnDetails> cameBack,
            List<CaseNote> notes,
            Optional<ProposalDetails> proposed,
            EndOfCase end,
            Optional<DecisionSummary> decided,
            Optional<String> waitsForMailDesk,
            boolean rulesChangedSince,
            boolean signatureHidden) {}
}
