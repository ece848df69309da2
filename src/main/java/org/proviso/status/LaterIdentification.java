package org.proviso.status;

import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rules;

/**
 * What the rules say of identification that a voter brings later: whether the federal list holds, which is that of first
 * voters who registered by mail (52 USC 21083(b)(2)(A)), and whether a signed statement takes its place. Which papers a
 * state accepts no rule says; the voter is told to call.
 */
public record LaterIdentification(boolean federalList, boolean statement) {

    static LaterIdentification of(ResolvedPack pack) {
        return new LaterIdentification(
                pack.word(Rules.ID_REQUIRED_OF).equals("first_time_mail"), pack.isYes(Rules.DECLARATION_EXCUSES));
    }
}
