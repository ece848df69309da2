package org.proviso.election;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.proviso.core.BetweenRooms;
import org.proviso.core.CountyRuling;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.WhatIf;
import org.proviso.core.adjudication.kept.PackJson;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.RulePack;
import org.proviso.files.InputException;
import org.proviso.files.packs.RulePacks;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The rules of an election: those in force, and those that an assessment used before. For services. Thread-safe. */
@BetweenRooms
@Service
public class RulesService {

    /** All that the rules in force depend on; while it is the same, so are they. */
    private record InForce(
            ElectionId electionId, String pack, LocalDate date, List<CountyRuling> rulings, Set<LocalDate> daysClosed) {

        static InForce of(Election election) {
            return new InForce(
                    election.id(), election.rulePack(), election.date(), election.rulings(), election.daysClosed());
        }

        DeadlineBook read(RulePack given) {
            ResolvedPack resolved = PackResolver.resolve(given, date, RulePacks.rulings(List.copyOf(rulings)));
            return DeadlineBook.of(resolved, daysClosed);
        }
    }

    private record CachedRules(InForce key, DeadlineBook book, boolean needsTheMeeting) {

        static CachedRules of(InForce key, DeadlineBook book) {
            return new CachedRules(key, book, book.needsTheMeeting());
        }
    }

    private final ElectionStore elections;
    private final ResolvedPackStore packs;
    private final RuleChangeStore changes;
    private final BoardMeetingStore meetings;
    private final Map<ElectionId, CachedRules> kept = new ConcurrentHashMap<>();

    RulesService(
            ElectionStore elections, ResolvedPackStore packs, RuleChangeStore changes, BoardMeetingStore meetings) {
        this.elections = elections;
        this.packs = packs;
        this.changes = changes;
        this.meetings = meetings;
    }

    /**
     * The rules in force for an election: its pack for its date, with the county's rulings and the days closed as they
     * are in this transaction, and dated by the board's meeting where a deadline counts from it. The pack is read and
     * resolved only when one of these has changed. Throws {@link IllegalArgumentException} where there is no such
     * election.
     */
    @Transactional(readOnly = true)
    public DeadlineBook book(ElectionId electionId) {
        InForce now = InForce.of(demand(electionId));
        CachedRules rules = Objects.requireNonNull(
                kept.compute(
                        electionId,
                        (id, before) -> before != null && before.key().equals(now)
                                ? before
                                : CachedRules.of(now, now.read(pack(electionId, now.pack())))),
                "rules are always kept once they are read");
        return rules.needsTheMeeting() ? dated(electionId, rules.book()) : rules.book();
    }

    private DeadlineBook dated(ElectionId electionId, DeadlineBook book) {
        return meetings.find(electionId)
                .map(meetsAt -> book.with(DeadlineAnchor.BOARD_MEETING, meetsAt))
                .orElse(book);
    }

    /** The same for rules of which nobody knows yet whether they need the meeting. */
    private DeadlineBook datedWhereNeeded(ElectionId electionId, DeadlineBook book) {
        return book.needsTheMeeting() ? dated(electionId, book) : book;
    }

    /** The rules as they would be under another pack: with the county's rulings and the days closed as they are. */
    @Transactional(readOnly = true)
    public DeadlineBook deadlinesUnder(ElectionId electionId, RulePack pack) {
        return datedWhereNeeded(electionId, InForce.of(demand(electionId)).read(pack));
    }

    /**
     * The rules as they would be under a pack that comes with the program (empty for the one in force), with values
     * changed, by rule. Refused where a pack, a rule or a value is none.
     */
    @Transactional(readOnly = true)
    public ActResult<DeadlineBook> withChangedRules(
            ElectionId electionId, String packName, Map<String, String> changed) {
        Election election = demand(electionId);
        List<CountyRuling> rulings = new ArrayList<>(election.rulings());
        changed.forEach((rule, value) ->
                rulings.add(new CountyRuling(rule, value, WhatIf.SUPPOSED, election.date(), WhatIf.SUPPOSED)));
        if (!packName.isEmpty() && !RulePacks.bundled().contains(packName)) {
            return ActResult.refused(
                    Refusal.at("pack", Why.NO_SUCH_RULE_PACK, "There is no rule pack " + packName + "."));
        }
        RulePack pack = packName.isEmpty() ? pack(electionId, election.rulePack()) : RulePacks.load(packName);
        try {
            DeadlineBook book = DeadlineBook.of(
                    PackResolver.resolve(pack, election.date(), RulePacks.rulings(rulings)), election.daysClosed());
            return ActResult.accepted(datedWhereNeeded(electionId, book));
        } catch (InputException e) {
            return ActResult.refused(Refusal.at("changed", Why.RULES_NOT_READABLE, e.reason()));
        }
    }

    private RulePack pack(ElectionId electionId, String name) {
        return changes.content(electionId, name)
                .map(text -> RulePacks.read(name, text))
                .orElseGet(() -> RulePacks.load(name));
    }

    /**
     * The rules as they were when something was assessed under the pack of that hash, whatever is in force since, on
     * the election's calendar. Throws {@link IllegalArgumentException} where no such pack was kept for the election,
     * {@link IllegalStateException} where the one that was kept is no longer what its hash says.
     */
    @Transactional(readOnly = true)
    public DeadlineBook book(ElectionId electionId, String packHash) {
        Election election = demand(electionId);
        String content = packs.content(electionId, packHash)
                .orElseThrow(() -> new IllegalArgumentException(
                        "No rules with the hash " + packHash + " were ever in force for " + electionId + "."));
        ResolvedPack pack = read(electionId, packHash, content);
        return datedWhereNeeded(electionId, DeadlineBook.of(pack, election.daysClosed()));
    }

    private static ResolvedPack read(ElectionId electionId, String packHash, String content) {
        String where = "The rules kept for " + electionId + " with the hash " + packHash;
        ResolvedPack pack;
        try {
            pack = PackJson.read(content);
        } catch (RuntimeException e) {
            throw new IllegalStateException(where + " cannot be read: " + e.getMessage() + ".", e);
        }
        if (!pack.hash().equals(packHash)) {
            throw new IllegalStateException(where + " were changed: they hash to " + pack.hash() + ".");
        }
        return pack;
    }

    /** Whether the rules now in force are kept already; they are not where they came with a newer program. */
    @Transactional(readOnly = true)
    public boolean areKept(ElectionId electionId) {
        return packs.isKept(electionId, book(electionId).pack().hash());
    }

    /**
     * Keeps the rules now in force, so that assessments may name them, and gives them. To be called in every
     * transaction that changes what is in force: a load, a county ruling. Does nothing where they are kept already.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public DeadlineBook keep(ElectionId electionId) {
        Election election = demand(electionId);
        Optional<String> uploaded = changes.acceptedBecause(electionId, election.rulePack());
        if (uploaded.isEmpty() && !RulePacks.bundled().contains(election.rulePack())) {
            throw new IllegalStateException("The rule pack " + election.rulePack()
                    + " does not come with the program, and only those that do are proved.");
        }
        DeadlineBook book = book(electionId);
        packs.keep(electionId, book.pack(), uploaded.orElse("bundled"));
        return book;
    }

    private Election demand(ElectionId electionId) {
        return elections
                .find(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election " + electionId + "."));
    }
}
