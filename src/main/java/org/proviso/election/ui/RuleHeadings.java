package org.proviso.election.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.rules.Rule;

/** Under which heading a rule is read. */
final class RuleHeadings {

    private static final Map<String, String> BY_BEGINNING = new LinkedHashMap<>();

    static {
        BY_BEGINNING.put("provisional.", "Provisional ballots");
        BY_BEGINNING.put("places.", "Provisional ballots");
        BY_BEGINNING.put("registration.", "Registration");
        BY_BEGINNING.put("moves.", "Voters who moved");
        BY_BEGINNING.put("primary.", "Primaries");
        BY_BEGINNING.put("affirmation.", "The affirmation");
        BY_BEGINNING.put("identification.", "Identification");
        BY_BEGINNING.put("mail", "Mail ballots");
        BY_BEGINNING.put("counted", "Mail ballots");
        BY_BEGINNING.put("ballot.", "The ballot of another precinct");
        BY_BEGINNING.put("sending_on.", "Voters of other counties");
        BY_BEGINNING.put("prevails.", "Two ballots of one voter");
        BY_BEGINNING.put("challenge.", "Challenges");
        BY_BEGINNING.put("signature.", "Signatures");
        BY_BEGINNING.put("extended_hours.", "Hours extended by a court");
        BY_BEGINNING.put("decision.", "Deadlines of the office");
        BY_BEGINNING.put("certification.", "Deadlines of the office");
        BY_BEGINNING.put("gate.", "Before when nothing is done");
        BY_BEGINNING.put("decider.", "Who decides, and how");
        BY_BEGINNING.put("office.", "The office");
        BY_BEGINNING.put("reasons.", "Reasons");
        BY_BEGINNING.put("consequence.", "What follows from each reason");
        BY_BEGINNING.put("cure", "What a voter may still bring, and until when");
        BY_BEGINNING.put("notice", "Notices to voters");
        BY_BEGINNING.put("access.", "How a voter finds out");
        BY_BEGINNING.put("rejected.", "How a voter finds out");
        BY_BEGINNING.put("records.", "The office");
        BY_BEGINNING.put("terms.", "What the state calls things");
    }

    private RuleHeadings() {}

    static String of(Rule rule) {
        return BY_BEGINNING.entrySet().stream()
                .filter(one -> rule.key().startsWith(one.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("Other rules");
    }
}
