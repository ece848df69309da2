package org.proviso.board;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.Election;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.deciding.DeciderKind;

/** Which deciding body a session is of; which there are follows from who decides by the rule pack. */
public enum BodyKind implements Code {
    OFFICIAL(DeciderKind.OFFICIAL, "the official"),
    BOARD(DeciderKind.BOARD, "the board"),
    FIRST(DeciderKind.TWO_BODIES, "the first body"),
    SECOND(DeciderKind.TWO_BODIES, "the second body");

    private final DeciderKind kind;
    private final String words;

    BodyKind(DeciderKind kind, String words) {
        this.kind = kind;
        this.words = words;
    }

    /** The bodies that decide where this kind of decider does. */
    public static List<BodyKind> forDecider(DeciderKind kind) {
        return Arrays.stream(values()).filter(body -> body.kind == kind).toList();
    }

    /** As it is said in a sentence: {@code the first body}. */
    public String words() {
        return words;
    }

    static String words(List<BodyKind> bodies) {
        return bodies.stream().map(BodyKind::words).collect(Collectors.joining(" and "));
    }

    boolean isOf(DeciderKind decider) {
        return kind == decider;
    }

    public boolean isOneOfTwo() {
        return kind == DeciderKind.TWO_BODIES;
    }

    /** The other of two bodies. */
    public BodyKind other() {
        return this == FIRST ? SECOND : FIRST;
    }

    /** Its members and quorum: an official is one alone; both of two bodies are as large as the election says. */
    public DecidingBody seats(Election election) {
        return this == OFFICIAL ? new DecidingBody(1, 1) : election.decider();
    }
}
