package org.proviso.board.record;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.MotionResult;

/** What the entries of the ledger say of sessions, motions and votes. Not thread-safe. */
final class BoardLedgerEntries {

    private final Map<String, String> said = new TreeMap<>();

    /** Each thing by its name. */
    Map<String, String> said() {
        return said;
    }

    void add(LedgerEntry entry) {
        String name = entry.subject();
        Map<String, Object> payload = entry.payload();
        switch (entry.act()) {
            case "session_called" -> {
                said.put(name + " body", text(payload.get("body")));
                said.put(name + " called for", text(payload.get("called_for")));
                said.put(name + " quorum", text(payload.get("quorum")));
            }
            case "session_moved" -> said.put(name + " called for", text(payload.get("called_for")));
            case "session_opened" -> said.put(name + " opened", "yes");
            case "session_closed" -> said.put(name + " closed", "yes");
            case "session_reopened" -> {
                said.remove(name + " closed");
                count(name + " reopenings");
            }
            case "member_arrived" -> count(name + " arrivals");
            case "record_kept" -> count(name + " keepers of the record");
            case "member_recused" -> count("session-" + payload.get("session") + " recusals");
            case "vote_confirmed" -> said.put(name + " confirmed by " + payload.get("member"), "yes");
            case "vote_disputed" -> said.put(name + " confirmed by " + payload.get("member"), "no");
            case "motion_moved" -> moved(name, entry);
            case "motion_seconded" -> said.put(name + " seconded by", by(payload.get("seconded_by"), entry));
            case "motion_put" -> said.put(name + " put", "yes");
            case "motion_withdrawn" -> said.put(name + " result", MotionResult.WITHDRAWN.code());
            case "vote_closed" -> closed(name, payload);
            default -> {}
        }
    }

    private void moved(String name, LedgerEntry entry) {
        Map<String, Object> payload = entry.payload();
        said.put(name + " outcome", text(payload.get("outcome")));
        said.put(name + " moved by", by(payload.get("moved_by"), entry));
        said.put(name + " reasons", text(payload.get("reasons")));
        said.put(name + " contests", text(payload.get("contests")));
        said.put(name + " reference", text(payload.get("reference")));
        if (payload.get("against_rules") instanceof List<?> against) {
            said.put(
                    name + " against the rules",
                    against.stream()
                            .filter(Map.class::isInstance)
                            .map(Map.class::cast)
                            .map(one ->
                                    against(one.get("envelope"), one.get("rules_say"), one.get("known_to_have_voted")))
                            .collect(Collectors.joining(", ")));
        }
    }

    /** The member for whom somebody recorded it, or whoever did it. */
    private static String by(@Nullable Object member, LedgerEntry entry) {
        return member == null ? entry.actor() : String.valueOf(member);
    }

    /** {@code P-1050 reject true}. */
    static String against(@Nullable Object envelope, @Nullable Object rulesSay, @Nullable Object knownToHaveVoted) {
        return envelope + " " + rulesSay + " " + knownToHaveVoted;
    }

    private void closed(String name, Map<String, Object> payload) {
        said.put(name + " result", text(payload.get("result")));
        said.put(name + " envelopes", text(payload.get("envelopes")));
        if (payload.get("votes") instanceof List<?> votes) {
            for (Object castVote : votes) {
                if (castVote instanceof Map<?, ?> vote) {
                    said.put(name + " vote of " + vote.get("member"), text(vote.get("vote")));
                }
            }
        }
    }

    private void count(String name) {
        said.merge(name, "1", (before, added) -> String.valueOf(Integer.parseInt(before) + 1));
    }

    private static String text(@Nullable Object value) {
        return value instanceof List<?> list
                ? list.stream().map(String::valueOf).collect(Collectors.joining(", "))
                : String.valueOf(value);
    }
}
