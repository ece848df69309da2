package org.proviso.board;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Supplier;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.database.OfficeTime;
import org.proviso.database.TestOffice;
import org.proviso.election.RulesService;
import org.proviso.intake.LoadedOffice;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.SignatureComparison;

/**
 * The samples' primary two days after election day, with ada and ben who review, eve, fay, gil, hal and ivy who decide,
 * and cases brought before the decider on what the rules really say of them.
 */
public record CasesReady(TestOffice office) {

    public static final String ID = LoadedOffice.ID;

    /** Envelopes in order that count in full. */
    public static final List<EnvelopeNumber> COUNT =
            List.of(new EnvelopeNumber("P-1012"), new EnvelopeNumber("P-1042"), new EnvelopeNumber("P-1049"));

    /** Envelopes with a ballot of another party than the voter's, which the sample's rules reject. */
    public static final List<EnvelopeNumber> WRONG_PARTY =
            List.of(new EnvelopeNumber("P-1019"), new EnvelopeNumber("P-1028"));

    /** Envelopes of voters who registered too late. */
    public static final List<EnvelopeNumber> LATE = List.of(new EnvelopeNumber("P-1050"), new EnvelopeNumber("P-1058"));

    public static final String REFERENCE = "Example Election Code (invented) 5.5 (2020)";

    /** After the gate on decisions, which opens on August 6 at 9:00. */
    public static final LocalDateTime NOON = LocalDateTime.of(2026, 8, 6, 12, 0);

    public static CasesReady in(TestOffice office) {
        OfficeTime.set(office, NOON);
        office.begin("the primary with two who review and five who decide", () -> staffed(office));
        Staff.signIn("hugh");
        return new CasesReady(office);
    }

    private static void staffed(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ada", Role.REVIEWER);
        Staff.hire(office, "ben", Role.REVIEWER, Role.DECIDER);
        for (String decider : List.of("eve", "fay", "gil", "hal", "ivy")) {
            Staff.hire(office, decider, Role.DECIDER);
        }
    }

    /** Has the office rule on a rule of the pack. */
    public CasesReady ruled(String rule, String value) {
        office.jdbc()
                .sql("insert into county_ruling values (?, ?, ?, 'A. Reyes', ?, 'letter of counsel')")
                .params(ID, rule, value, NOON.toLocalDate())
                .update();
        office.inTransaction(() -> office.the(RulesService.class).keep(new ElectionId(ID)));
        return this;
    }

    public static EnvelopeKey key(String envelope) {
        return new EnvelopeKey(new ElectionId(ID), new EnvelopeNumber(envelope));
    }

    public CasesReady toCount(List<EnvelopeNumber> envelopes) {
        envelopes.forEach(envelope -> propose(envelope, DecisionOutcome.COUNT));
        return this;
    }

    /** Proposed to be rejected by ada, read again by ben. */
    public CasesReady toReject(List<EnvelopeNumber> envelopes) {
        for (EnvelopeNumber envelope : envelopes) {
            propose(envelope, DecisionOutcome.REJECT);
            readAgain(envelope.value());
        }
        return this;
    }

    private void propose(EnvelopeNumber envelope, DecisionOutcome outcome) {
        worked(envelope);
        List<Reason> reasons = office.the(AssessmentService.class)
                .now(key(envelope.value()))
                .settled()
                .outcome()
                .reasons();
        propose(envelope.value(), outcome, reasons);
    }

    /** Ada has taken it, settled whose it is and compared the signature; nothing is proposed yet. */
    public CasesReady worked(EnvelopeNumber envelope) {
        EnvelopeKey key = key(envelope.value());
        as("ada", () -> accepted(office.the(CaseAssignmentService.class).take(key, version(envelope.value()))));
        Link link = office.the(LinkStore.class).newest(key).orElseThrow();
        as(
                "ada",
                () -> accepted(office.the(LinkService.class)
                        .confirm(new ConfirmLink(key, version(envelope.value()), link.voterId(), "Looked up."))));
        as(
                "ada",
                () -> accepted(office.the(AnswerService.class)
                        .recordSignatureComparison(new SignatureComparison(
                                key, version(envelope.value()), SignatureComparison.Finding.AGREES, ""))));
        return this;
    }

    /** Proposed again on another ground, once somebody looked into it. */
    public void toRejectFor(Reason reason, String envelope) {
        as("ada", () -> accepted(office.the(CaseAssignmentService.class).take(key(envelope), version(envelope))));
        propose(envelope, DecisionOutcome.REJECT, List.of(reason));
        readAgain(envelope);
    }

    private void propose(String envelope, DecisionOutcome outcome, List<Reason> reasons) {
        as(
                "ada",
                () -> accepted(office.the(ProposalService.class)
                        .propose(new ProposeOutcome(
                                key(envelope), version(envelope), outcome, reasons, REFERENCE, ""))));
    }

    private void readAgain(String envelope) {
        as(
                "ben",
                () -> accepted(
                        office.the(ProposalService.class).secondReview(key(envelope), version(envelope), true, "")));
    }

    public EnvelopeCase now(String envelope) {
        return office.the(CaseService.class).find(key(envelope)).orElseThrow();
    }

    public int version(EnvelopeNumber envelope) {
        return version(envelope.value());
    }

    public EnvelopeCase now(EnvelopeNumber envelope) {
        return now(envelope.value());
    }

    public int version(String envelope) {
        return now(envelope).version();
    }

    /** Does something as one of the staff. */
    public static <T> T as(String name, Supplier<T> act) {
        Staff.signIn(name);
        try {
            return act.get();
        } finally {
            Staff.signOut();
        }
    }

    private static EnvelopeCase accepted(ActResult<EnvelopeCase> outcome) {
        if (outcome instanceof ActResult.Accepted<EnvelopeCase> done) {
            return done.now();
        }
        throw new AssertionError("refused: " + ((ActResult.Refused<EnvelopeCase>) outcome).words());
    }
}
