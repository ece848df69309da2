package org.proviso.review;

import static org.proviso.review.CaseState.DECIDED;
import static org.proviso.review.CaseState.ENDED;
import static org.proviso.review.CaseState.IN_REVIEW;
import static org.proviso.review.CaseState.OPEN;
import static org.proviso.review.CaseState.PROPOSED;
import static org.proviso.review.CaseState.READY;
import static org.proviso.review.CaseState.RECEIVED;
import static org.proviso.review.CaseState.RELEASED;
import static org.proviso.review.CaseState.SENT_ON;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;

/**
 * The one transition graph of a case: every state, every act and where it leads. Nothing else changes the state of a
 * case. Whether the act is legal otherwise (the law, the gates, one's own act) is checked besides.
 */
public final class CaseGraph {

    /** An act that leads from one state to another. */
    public record Edge(CaseState from, CaseAct act, CaseState to) {}

    private static final List<Edge> EDGES = edges();

    private CaseGraph() {}

    /** Every edge, in the order of the life of a case. */
    public static List<Edge> all() {
        return EDGES;
    }

    /** Where the act leads from there, or why it is refused. */
    public static ActResult<CaseState> step(CaseState from, CaseAct act) {
        return EDGES.stream()
                .filter(edge -> edge.from() == from && edge.act() == act)
                .findFirst()
                .map(edge -> ActResult.accepted(edge.to()))
                .orElseGet(() -> ActResult.refused(refused(from, act)));
    }

    /** Why the act is refused in that state; empty where it leads on. */
    public static Optional<Refusal> refusal(CaseState from, CaseAct act) {
        return step(from, act).refusals().stream().findFirst();
    }

    /** Where an act leads that was found to be possible. */
    public static CaseState after(CaseState from, CaseAct act) {
        return step(from, act)
                .ifAccepted()
                .orElseThrow(() -> new IllegalStateException(act + " does not lead on from " + from));
    }

    private static Refusal refused(CaseState from, CaseAct act) {
        String possible = EDGES.stream()
                .filter(edge -> edge.act() == act)
                .map(edge -> edge.from().spoken())
                .collect(Collectors.joining(", "));
        return Refusal.of(
                Why.NOT_IN_THIS_STATE,
                "The case is " + from.spoken() + "; to " + act.spoken() + " it must be one of: " + possible + ".");
    }

    private static List<Edge> edges() {
        List<Edge> edges = new ArrayList<>();
        lead(edges, CaseAct.KEY, OPEN, RECEIVED);
        lead(edges, CaseAct.TAKE, IN_REVIEW, OPEN);
        lead(edges, CaseAct.GIVE_BACK, OPEN, IN_REVIEW);
        lead(edges, CaseAct.PROPOSE_COUNT, READY, IN_REVIEW);
        lead(edges, CaseAct.PROPOSE_LESS, PROPOSED, IN_REVIEW);
        lead(edges, CaseAct.PROPOSE_AGAINST, PROPOSED, IN_REVIEW);
        lead(edges, CaseAct.PROPOSE_END, PROPOSED, IN_REVIEW);
        lead(edges, CaseAct.WITHDRAW, IN_REVIEW, PROPOSED, READY);
        lead(edges, CaseAct.AGREE, READY, PROPOSED);
        lead(edges, CaseAct.RETURN, OPEN, PROPOSED, READY);
        lead(edges, CaseAct.RECALL, OPEN, PROPOSED, READY);
        lead(edges, CaseAct.DECIDE, DECIDED, READY);
        lead(edges, CaseAct.ORDER, DECIDED, OPEN, IN_REVIEW, PROPOSED, READY, DECIDED, SENT_ON, ENDED);
        lead(edges, CaseAct.REOPEN, OPEN, DECIDED, SENT_ON, ENDED);
        lead(edges, CaseAct.SEND_ON, SENT_ON, PROPOSED);
        lead(edges, CaseAct.END, ENDED, PROPOSED);
        lead(edges, CaseAct.RELEASE, RELEASED, DECIDED);
        return Collections.unmodifiableList(edges);
    }

    private static void lead(List<Edge> edges, CaseAct act, CaseState to, CaseState... from) {
        for (CaseState state : from) {
            edges.add(new Edge(state, act, to));
        }
    }
}
