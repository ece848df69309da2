package org.proviso.review.decide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.proviso.access.OfficeUser;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Decisions that a newer record contradicts, for the rooms that open envelopes and add up. */
@Component
@BetweenRooms
public class ContradictedDecisions {

    private final ContradictionStore store;
    private final CaseStore cases;
    private final CaseDoor door;
    private final CaseActSteps steps;

    ContradictedDecisions(ContradictionStore store, CaseStore cases, CaseDoor door, CaseActSteps steps) {
        this.store = store;
        this.cases = cases;
        this.door = door;
        this.steps = steps;
    }

    /** Those nobody has followed up yet, by envelope number. */
    @Transactional(readOnly = true)
    public List<ContradictedDecision> open(ElectionId electionId) {
        return store.open(electionId).stream()
                .filter(ContradictedDecision::counts)
                .toList();
    }

    /** That of one case, if it is contradicted and nobody has followed it up yet. */
    @Transactional(readOnly = true)
    public Optional<ContradictedDecision> open(EnvelopeKey key) {
        return store.open(key).stream().filter(ContradictedDecision::counts).findFirst();
    }

    /** What was done about contradicted decisions, by envelope number and in their order. */
    @Transactional(readOnly = true)
    public List<FollowUp> followUps(ElectionId electionId) {
        return store.followUps(electionId);
    }

    /** Keeps what a newer record changed about a case that was settled already, in the transaction of the change. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void note(EnvelopeKey key, List<String> because) {
        String words = String.join("; ", new TreeSet<>(because));
        if (!words.isBlank()) {
            store.note(key, words);
        }
    }

    /** The decider's vote lets the decision stand, for what the rules say now; in the transaction of the vote. */
    @Transactional(propagation = Propagation.MANDATORY)
    public ActResult<EnvelopeCase> letStand(
            EnvelopeKey key, int version, String because, OfficeUser by, int sessionNo, int motionNo) {
        LockedCase locked = door.within(by.actor()).lock(key, version, new TreeSet<>());
        Optional<ContradictedDecision> found = open(key);
        return locked.refuse(() -> notContradicted(key, found))
                .save(seen -> {
                    store.followUp(found.orElseThrow(), because, sessionNo, motionNo, by.userName());
                    return cases.save(seen);
                })
                .record("let_stand", () -> entry(found.orElseThrow(), because, sessionNo, motionNo));
    }

    /** Why there is nothing to follow up. */
    static Optional<Refusal> notContradicted(EnvelopeKey key, Optional<ContradictedDecision> found) {
        return Refusal.when(
                found.isEmpty(),
                Why.NOTHING_NEW,
                "The rules say nothing new about " + key.envelopeNo() + ": nothing is left to follow up.");
    }

    /** What the ledger has of a follow-up: all its row has; free text is hidden. */
    Map<String, Object> entry(
            ContradictedDecision found, String note, @Nullable Integer sessionNo, @Nullable Integer motionNo) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("assessment", found.assessment());
        entry.put("says", found.says().code());
        entry.put("reasons", found.reasons().stream().map(Reason::code).toList());
        entry.put("note", steps.hidden(found.key(), note));
        put(entry, "decision", found.decision());
        put(entry, "session", sessionNo);
        put(entry, "motion", motionNo);
        return entry;
    }

    private static void put(Map<String, Object> entry, String name, @Nullable Integer number) {
        if (number != null) {
            entry.put(name, number);
        }
    }
}
