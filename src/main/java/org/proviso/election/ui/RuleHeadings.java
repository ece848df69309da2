package org.proviso.election.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.rules.Rule;

/** The heading under which each rule is listed. */
final class RuleHeadings {

    private static final Map<String, String> BY_BEGINNING = new LinkedHashMap<>();

    static {
        BY_BEGINNING.put("provisional.", "Provisional ballots");
        BY_BEGINNING.put("places.", "Provisional ballots");
        BY_BEGINNING.put("registration.", "Registration");
        BY_BEGINNING.put("moves.", "Voters who moved");
        BY_BEGINNING.put("primary.", "Primaries");
        BY_BEGINNING.put("affirmation.", "Affirmation");
        BY_BEGINNING.put("identification.", "Identification");
        BY_BEGINNING.put("mail", "Mail ballots");
        BY_BEGINNING.put("counted", "Mail ballots");
        BY_BEGINNING.put("ballot.", "Ballots for another precinct");
        BY_BEGINNING.put("sending_on.", "Voters from other counties");
        BY_BEGINNING.put("prevails.", "Two ballots from one voter");
        BY_BEGINNING.put("challenge.", "Challenges");
        BY_BEGINNING.put("signature.", "Signatures");
        BY_BEGINNING.put("extended_hours.", "Court-extended hours");
        BY_BEGINNING.put("decision.", "Office deadlines");
        BY_BEGINNING.put("certification.", "Office deadlines");
        BY_BEGINNING.put("gate.", "Earliest date for each step");
        BY_BEGINNING.put("decider.", "Who decides, and how");
        BY_BEGINNING.put("office.", "Office");
        BY_BEGINNING.put("reasons.", "Reasons");
        BY_BEGINNING.put("consequence.", "Effect of each reason");
        BY_BEGINNING.put("cure", "What a voter may still cure, and by when");
        BY_BEGINNING.put("notice", "Notices to voters");
        BY_BEGINNING.put("access.", "How voters find out");
        BY_BEGINNING.put("rejected.", "How voters find out");
        BY_BEGINNING.put("records.", "Office");
        BY_BEGINNING.put("terms.", "The state's own terms");
    }

    private RuleHeadings() {}

    static String of(Rule rule) {
        return BY_BEGINNING.entrySet().stream()
                .filter(entry -> rule.key().startsWith(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("Other rules");
    }
}
