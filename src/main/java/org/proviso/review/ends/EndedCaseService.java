package org.proviso.review.ends;

import jakarta.validation.Valid;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.election.ElectionService;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.CaseReturnStore;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** Cases that ended without a decision: the form that goes with an envelope, the other county's receipt, the way back. */
@Service
@Validated
public class EndedCaseService {

    private final CaseReturnStore returns;
    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final EndProposalStore proposals;
    private final CountyReceiptStore receipts;
    private final SentOnEnvelopes sentOn;
    private final VoterGroups groups;
    private final ElectionService elections;
    private final AccessService access;
    private final StaffList staff;

    EndedCaseService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            EndProposalStore proposals,
            CountyReceiptStore receipts,
            SentOnEnvelopes sentOn,
            VoterGroups groups,
            ElectionService elections,
            AccessService access,
            StaffList staff,
            CaseReturnStore returns) {
        this.returns = returns;
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.proposals = proposals;
        this.receipts = receipts;
        this.sentOn = sentOn;
        this.groups = groups;
        this.elections = elections;
        this.access = access;
        this.staff = staff;
    }

    /** Every envelope that is sent on, with the other county's receipt, by envelope number. */
    @Transactional(readOnly = true)
    public List<SentOnEnvelope> sentOn(ElectionId electionId) {
        demandReader();
        return receipts.sentOn(electionId);
    }

    /** The other county's receipt for an envelope that is sent on; empty while there is none. */
    @Transactional(readOnly = true)
    public Optional<CountyReceipt> receipt(EnvelopeKey key) {
        demandReader();
        return receipts.standing(key);
    }

    /** The form for an envelope that is sent on; empty where it is not, or was before a second person confirmed it. */
    @Transactional(readOnly = true)
    public Optional<SentOnForm> form(EnvelopeKey key) {
        demandReader();
        boolean away = cases.find(key)
                .filter(found -> found.state() == CaseState.SENT_ON)
                .isPresent();
        return proposals
                .newest(key)
                .filter(proposal -> away && proposal.state() == Proposal.State.AGREED)
                .map(this::form);
    }

    private SentOnForm form(EndProposal proposal) {
        EnvelopeKey key = proposal.key();
        return new SentOnForm(
                steps.election(key.electionId()),
                key.envelopeNo(),
                proposal.toCounty(),
                proposal.reasons(),
                proposal.legalReference(),
                name(proposal.proposedBy()),
                name(Objects.requireNonNull(proposal.readBy(), "somebody confirmed what is agreed")),
                local(key.electionId(), proposal.readAt()));
    }

    /** Records that the other county received the envelope; the case stays as it is. */
    @Transactional
    public ActResult<EnvelopeCase> recordReceipt(@Valid RecordCountyReceipt command) {
        EnvelopeKey key = command.key();
        LockedCase locked = door.demand(Permission.PROPOSE).lock(key, command.version());
        return locked.refuse(() -> Refusal.when(
                        locked.seen().state() != CaseState.SENT_ON,
                        Why.NOT_IN_THIS_STATE,
                        "The case is " + locked.seen().state().spoken() + ": its envelope is not with another county."))
                .refuse(() -> receipts.standing(key).map(EndedCaseService::recordedAlready))
                .refuseAll(() -> wrong(command))
                .save(seen -> {
                    receipts.insert(
                            command,
                            Objects.requireNonNull(command.receivedOn(), "a missing day was refused"),
                            locked.user().userName());
                    return cases.save(seen);
                })
                .record("county_receipt_recorded", () -> entry(command));
    }

    /** Reopens a case that was sent on or closed without a decision, with the reason, until the election is closed. */
    @Transactional
    public ActResult<EnvelopeCase> reopen(EnvelopeKey key, int version, String because) {
        LockedCase locked = door.demand(Permission.REOPEN_ENDED).lock(key, version, groups.others(key));
        Map<String, Object> entry = sentOn.entry(key, because);
        CaseState state = locked.seen().state();
        return locked.refuse(() -> Refusal.when(
                        state != CaseState.SENT_ON && state != CaseState.ENDED,
                        Why.NOT_IN_THIS_STATE,
                        "The case is " + state.spoken() + ": it was neither sent on nor closed without a decision."))
                .refuse(() -> steps.ordered(key))
                .refuse(() -> Refusal.when(because.isBlank(), Why.NO_REASON, "Give a reason to reopen this case."))
                .save(seen -> {
                    sentOn.back(key);
                    returns.note(
                            key,
                            CaseReturn.Kind.REOPENED,
                            because,
                            locked.user().userName());
                    return cases.save(seen.to(CaseGraph.after(seen.state(), CaseAct.REOPEN)));
                })
                .assessAnew()
                .record("reopened", () -> entry);
    }

    private static Refusal recordedAlready(CountyReceipt receipt) {
        return Refusal.of(Why.NOTHING_NEW, "The receipt is recorded already. " + receipt.words());
    }

    private List<Refusal> wrong(RecordCountyReceipt command) {
        return Stream.of(
                        dayWrong(command.key(), command.receivedOn()),
                        command.receivedBy().isBlank()
                                ? Optional.of(Refusal.at(
                                        "receivedBy", Why.NO_REASON, "Required. Enter who received it there."))
                                : Optional.<Refusal>empty())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Refusal> dayWrong(EnvelopeKey key, @Nullable LocalDate day) {
        if (day == null) {
            return Optional.of(
                    Refusal.at("receivedOn", Why.MISTYPED, "Required. Enter the day it was received there."));
        }
        LocalDateTime sent = proposals
                .newest(key)
                .map(proposal -> local(key.electionId(), proposal.readAt()))
                .orElse(null);
        if (day.isAfter(steps.now(key.electionId()).toLocalDate())) {
            return Optional.of(
                    Refusal.at("receivedOn", Why.MOMENT_NOT_POSSIBLE, DateWords.date(day) + " has not come yet."));
        }
        return sent != null && day.isBefore(sent.toLocalDate())
                ? Optional.of(Refusal.at(
                        "receivedOn",
                        Why.MOMENT_NOT_POSSIBLE,
                        "The envelope was sent on only on " + DateWords.date(sent.toLocalDate()) + "."))
                : Optional.empty();
    }

    private Map<String, Object> entry(RecordCountyReceipt command) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("received_on", String.valueOf(command.receivedOn()));
        entry.put(
                "received_by", steps.hidden(command.key(), command.receivedBy().strip()));
        if (!command.countyReference().isBlank()) {
            entry.put(
                    "reference",
                    steps.hidden(command.key(), command.countyReference().strip()));
        }
        return entry;
    }

    private void demandReader() {
        access.demand(access.isPermitted(Permission.PROPOSE) ? Permission.PROPOSE : Permission.SEE_WHOLE_CASE);
    }

    private String name(UserName userName) {
        return staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }

    private @Nullable LocalDateTime local(ElectionId electionId, @Nullable Instant at) {
        return at == null ? null : LocalDateTime.ofInstant(at, elections.zone(electionId));
    }
}
