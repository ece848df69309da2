package org.proviso.review;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Draws the graph of a case for the documentation, so that the page and the program cannot differ. */
public final class CaseGraphDrawing {

    private CaseGraphDrawing() {}

    /** A Mermaid state diagram, one line an edge. */
    public static String mermaid() {
        String edges = CaseGraph.all().stream()
                .map(edge -> "    " + edge.from().code() + " --> " + edge.to().code() + ": "
                        + edge.act().spoken())
                .collect(Collectors.joining("\n"));
        return "stateDiagram-v2\n    [*] --> " + CaseState.RECEIVED.code() + "\n" + edges + "\n";
    }

    /** The same as tables of Markdown: what each state means, then each act with the states it leads from and to. */
    public static String tables() {
        String states = Arrays.stream(CaseState.values())
                .map(state -> "| " + state.spoken() + " | " + state.words() + " |")
                .collect(Collectors.joining("\n"));
        String acts = Arrays.stream(CaseAct.values()).map(CaseGraphDrawing::row).collect(Collectors.joining("\n"));
        return "| state | meaning |\n| --- | --- |\n" + states
                + "\n\n| act | who does what | from | to |\n| --- | --- | --- | --- |\n" + acts + "\n";
    }

    private static String row(CaseAct act) {
        return "| " + act.spoken() + " | " + act.words() + " | " + ends(act, true) + " | " + ends(act, false) + " |";
    }

    private static String ends(CaseAct act, boolean from) {
        return CaseGraph.all().stream()
                .filter(edge -> edge.act() == act)
                .map(edge -> (from ? edge.from() : edge.to()).spoken())
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
