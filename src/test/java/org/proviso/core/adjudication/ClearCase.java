package org.proviso.core.adjudication;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Finding;
import org.proviso.core.contests.BallotContests;

/** A case in which nothing stands in the way, to be changed fact by fact. */
public final class ClearCase {

    private static final String FACTS = """
            envelope=sealed voter_signature=signed official_signature=signed field.last_name=keyed
            field.first_name=keyed field.date_of_birth=keyed field.residence_address_line=keyed field.city=keyed
            field.zip=keyed field.id_last4=keyed field.statements_ticked=keyed identity=confirmed registration=in_time
            residence=in_county mail_ballots=none check_in=none other_county=not_listed other_envelope=none
            ballot=right_style place=own_place official_error=not_noted late_excuse=not_sworn entitlement=full party_ballot=own
            identification=shown signature_comparison=agrees vote_time=within_hours challenge=none
            eligibility=nothing_known court_order=none""";

    private final Map<Fact<?>, Finding> findings = new LinkedHashMap<>();
    private @Nullable BallotContests contests = contests("PRES HOUSE SHERIFF", "PRES HOUSE SHERIFF");

    public ClearCase() {
        with(FACTS);
    }

    /** Facts as {@code check_in=voted mail_ballots=late+void}; {@code unknown} takes one away. */
    public ClearCase with(String facts) {
        for (String given : facts.strip().split("\\s+")) {
            String[] parts = given.split("=");
            Fact<?> fact = Fact.find(parts[0]).orElseThrow();
            findings.put(fact, finding(fact, parts[1]));
        }
        return this;
    }

    /** The contests of the ballot cast and those of the right style, by their ids. */
    public ClearCase ballots(String cast, String right) {
        contests = contests(cast, right);
        return this;
    }

    public ClearCase contestsUnknown() {
        contests = null;
        return this;
    }

    public CaseFacts facts() {
        return new CaseFacts(Map.copyOf(findings), contests);
    }

    /** PRES and HOUSE are for federal office. */
    public static BallotContests contests(String cast, String right) {
        return new BallotContests(ids(cast), ids(right), Set.of("PRES", "HOUSE"));
    }

    private static Set<String> ids(String ids) {
        return ids.isEmpty() ? Set.of() : new LinkedHashSet<>(List.of(ids.split(" ")));
    }

    private static Finding finding(Fact<?> fact, String words) {
        if (words.equals("unknown")) {
            return Finding.UNKNOWN;
        }
        Set<FactWord> held = new LinkedHashSet<>();
        for (String word : words.split("\\+")) {
            if (!fact.severalMayHold() || !word.equals("none")) {
                held.add(word(fact, word));
            }
        }
        return new Finding(held, List.of());
    }

    private static FactWord word(Fact<?> fact, String code) {
        return fact.words().stream()
                .filter(word -> ((FactWord) word).code().equals(code))
                .map(FactWord.class::cast)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(code + " is no word of " + fact.key()));
    }
}
