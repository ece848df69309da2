package org.proviso.intake;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.BetweenRooms;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Election;
import org.proviso.core.Election.Receipts;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.election.ElectionService;
import org.springframework.stereotype.Component;

/** Receipt numbers as the office writes them, and which envelopes have one. It asks nobody's permission: for the services that do. */
@BetweenRooms
@Component
public class ReceiptOwners {

    private final ReceiptStore receipts;
    private final ElectionService elections;

    ReceiptOwners(ReceiptStore receipts, ElectionService elections) {
        this.receipts = receipts;
        this.elections = elections;
    }

    /** With a check digit a number has one spelling, however it was typed; one with a slip stays as typed. */
    public @Nullable ReceiptNumber written(ElectionId electionId, @Nullable ReceiptNumber typed) {
        return typed == null || isOfTheOfficesOwn(electionId)
                ? typed
                : CheckedReceipt.find(typed.value()).orElse(typed);
    }

    /** Refused where the check digit does not fit. */
    public Optional<Refusal> slip(ElectionId electionId, @Nullable ReceiptNumber receiptNo) {
        return receiptNo == null || isOfTheOfficesOwn(electionId)
                ? Optional.empty()
                : CheckedReceipt.slip(receiptNo.value())
                        .map(slip -> Refusal.at(
                                "receiptNo",
                                Why.MISTYPED,
                                "The receipt number " + receiptNo + " " + slip.words() + "."));
    }

    private boolean isOfTheOfficesOwn(ElectionId electionId) {
        return elections.find(electionId).map(Election::receipts).orElse(Receipts.OWN) == Receipts.OWN;
    }

    /** Refused where another envelope has the number. */
    public Optional<Refusal> taken(
            ElectionId electionId, @Nullable EnvelopeNumber own, @Nullable ReceiptNumber receiptNo) {
        List<String> others = others(electionId, own, receiptNo);
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "receiptNo",
                        Why.NUMBER_TAKEN,
                        "The receipt number " + receiptNo + " is also on " + NumberWords.listed(others) + "."));
    }

    /** The other envelopes of the office with that number, as a person of this election reads them. */
    public List<String> others(ElectionId electionId, @Nullable EnvelopeNumber own, @Nullable ReceiptNumber receiptNo) {
        return receiptNo == null
                ? List.of()
                : receipts.withReceipt(receiptNo).stream()
                        .filter(key -> !key.electionId().equals(electionId)
                                || !key.envelopeNo().equals(own))
                        .map(key -> NumberWords.spoken(key, electionId, this::name))
                        .toList();
    }

    /** The name of an election, as a person reads it. */
    public String name(ElectionId electionId) {
        return elections.find(electionId).map(Election::name).orElse(electionId.value());
    }
}
