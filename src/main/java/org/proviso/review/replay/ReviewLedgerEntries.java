package org.proviso.review.replay;

import java.util.List;
import java.util.Map;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.replay.CaseTrail.TrailVoter;

/** Entries of reviewers at work: who the voter is, what was answered, searched, asked and put forward. */
final class ReviewLedgerEntries {

    private ReviewLedgerEntries() {}

    static void put(Map<String, CaseLedgerEntry> kinds) {
        kinds.put("link_confirmed", (trail, entry, all) -> linked(trail, entry));
        kinds.put("other_voter_chosen", (trail, entry, all) -> linked(trail, entry));
        kinds.put("link_set_back", (trail, entry, all) -> setBack(trail, entry));
        kinds.put("findings_set_back", (trail, entry, all) -> findingsSetBack(trail, entry));
        kinds.put("search_recorded", ReviewLedgerEntries::searched);
        kinds.put("search_taken_back", (trail, entry, all) -> searchTakenBack(trail, entry));
        kinds.put("answer_given", (trail, entry, all) -> answered(trail, entry));
        kinds.put("signature_finding_seen", (trail, entry, all) -> findingSeen(trail, entry));
        kinds.put("answer_taken_back", (trail, entry, all) -> takenBack(trail, entry));
        kinds.put("put_forward", (trail, entry, all) -> putForward(trail, entry));
        kinds.put("research_asked", (trail, entry, all) -> asked(trail, entry));
        kinds.put("research_answered", (trail, entry, all) -> found(trail, entry));
        kinds.put("note_written", (trail, entry, all) -> noted(trail, entry));
        kinds.put("note_corrected", (trail, entry, all) -> noted(trail, entry));
    }

    /** Another voter was found: what was recorded about the first one holds no more. */
    private static void voided(CaseTrail trail, LedgerEntry entry) {
        if (entry.payload().get("voided") instanceof List<?> facts) {
            facts.forEach(fact -> withdrawn(trail, String.valueOf(fact)));
        }
    }

    private static boolean linked(CaseTrail trail, LedgerEntry entry) {
        voided(trail, entry);
        trail.add(
                CaseTable.LINK,
                new ExpectedRow(entry)
                        .with("identity", "confirmed")
                        .with("voter_id", entry.payload().get("voter"))
                        .with("ground", entry.payload().get("ground"))
                        .with("linked_by", entry.actor()));
        trail.settle(new TrailVoter(
                new EnvelopeNumber(entry.subject()),
                String.valueOf(entry.payload().get("voter"))));
        return trail.work();
    }

    /** The envelope was corrected, and the match no longer names the voter whom a person settled. */
    private static boolean setBack(CaseTrail trail, LedgerEntry entry) {
        voided(trail, entry);
        trail.add(
                CaseTable.LINK_SET_BACK,
                new ExpectedRow(entry).with("ground", entry.payload().get("because")));
        return trail.unsettle();
    }

    private static boolean findingsSetBack(CaseTrail trail, LedgerEntry entry) {
        voided(trail, entry);
        return !trail.state().isOver();
    }

    private static boolean searched(CaseTrail trail, LedgerEntry entry, CaseTrails all) {
        Map<String, Object> said = entry.payload();
        voided(trail, entry);
        trail.add(
                CaseTable.SEARCH,
                new ExpectedRow(entry)
                        .with("looked_in", said.get("looked_in"))
                        .with("found", said.get("found"))
                        .with("note", said.get("note"))
                        .with("searched_by", entry.actor()));
        if (!SearchFound.RECORD.code().equals(said.get("found"))) {
            trail.add(
                    CaseTable.LINK,
                    new ExpectedRow(entry)
                            .with("identity", "not_on_roll")
                            .with("ground", said.get("note"))
                            .with("linked_by", entry.actor()));
            Object same = said.get("same_voter_as");
            trail.settle(
                    same == null
                            ? new TrailVoter(new EnvelopeNumber(entry.subject()), "")
                            : all.of(new EnvelopeNumber(same.toString()))
                                    .voter()
                                    .orElseGet(() -> new TrailVoter(new EnvelopeNumber(same.toString()), "")));
        }
        return trail.work();
    }

    /** A search that found nobody was recorded by mistake; so was every one before it that found none. */
    private static boolean searchTakenBack(CaseTrail trail, LedgerEntry entry) {
        List<ExpectedRow> standing = trail.rows(CaseTable.SEARCH).stream()
                .filter(search -> !search.has("found", SearchFound.RECORD.code()) && search.has("taken_back_at", ""))
                .toList();
        standing.forEach(search -> search.with("taken_back_at", "yes")
                .with("taken_back_because", entry.payload().get("because")));
        return setBack(trail, entry) && !standing.isEmpty();
    }

    private static boolean answered(CaseTrail trail, LedgerEntry entry) {
        trail.add(
                CaseTable.ANSWER,
                new ExpectedRow(entry)
                        .with("kind", entry.payload().get("kind"))
                        .with("fact", entry.payload().get("fact"))
                        .with("fact_words", entry.payload().get("words"))
                        .with("reason", entry.payload().get("reason"))
                        .with("received_at", entry.payload().get("received_at"))
                        .with("given_by", entry.actor()));
        return trail.work();
    }

    /** Somebody who had not looked at the signature was shown what another found. */
    private static boolean findingSeen(CaseTrail trail, LedgerEntry entry) {
        trail.add(
                CaseTable.FINDING_SEEN,
                new ExpectedRow(entry)
                        .with("answer_no", entry.payload().get("answer"))
                        .with("seen_by", entry.actor()));
        return true;
    }

    private static boolean takenBack(CaseTrail trail, LedgerEntry entry) {
        withdrawn(trail, String.valueOf(entry.payload().get("fact")));
        return trail.work();
    }

    private static void withdrawn(CaseTrail trail, String fact) {
        List<ExpectedRow> standing = trail.rows(CaseTable.ANSWER).stream()
                .filter(answer -> answer.has("fact", fact) && answer.has("withdrawn_at", ""))
                .toList();
        standing.forEach(answer -> answer.with("withdrawn_at", "yes"));
    }

    private static boolean putForward(CaseTrail trail, LedgerEntry entry) {
        trail.add(
                CaseTable.CHOICE,
                new ExpectedRow(entry)
                        .with("reason", entry.payload().get("reason"))
                        .with("chosen_by", entry.actor()));
        return trail.work();
    }

    /** Notes stand in every state. */
    private static boolean noted(CaseTrail trail, LedgerEntry entry) {
        trail.add(
                CaseTable.NOTE,
                new ExpectedRow(entry)
                        .with("words", entry.payload().get("words"))
                        .with("corrects", entry.payload().get("corrects"))
                        .with("written_by", entry.actor()));
        return true;
    }

    private static boolean asked(CaseTrail trail, LedgerEntry entry) {
        trail.add(
                CaseTable.REQUEST,
                new ExpectedRow(entry)
                        .with("asked", entry.payload().get("asked"))
                        .with("asked_by", entry.actor()));
        return true;
    }

    private static boolean found(CaseTrail trail, LedgerEntry entry) {
        int number = Integer.parseInt(String.valueOf(entry.payload().get("request")));
        List<ExpectedRow> asked = trail.rows(CaseTable.REQUEST);
        if (number > asked.size()) {
            return false;
        }
        asked.get(number - 1).with("found", entry.payload().get("found")).with("found_by", entry.actor());
        return true;
    }
}
