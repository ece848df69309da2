package org.proviso.status;

import java.util.List;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rules;

/**
 * What the rules say of identification that a voter brings later: whether the federal list holds, which is that of first
 * voters who registered by mail (52 USC 21083(b)(2)(A)), whether a signed statement takes its place, and of which kinds, and
 * what is accepted. Where a pack does not list that, the voter is told to call. Words are codes of the rules.
 */
public record LaterIdentification(
        boolean federalList, boolean statement, List<String> accepts, List<String> declarations) {

    static LaterIdentification of(ResolvedPack pack) {
        return new LaterIdentification(
                pack.word(Rules.ID_REQUIRED_OF).equals("first_time_mail"),
                pack.isYes(Rules.DECLARATION_EXCUSES),
                pack.words(InformationRules.ID_ACCEPTS),
                pack.words(InformationRules.ID_DECLARATIONS));
    }
}
