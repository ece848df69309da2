package org.proviso.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.proviso.core.CountyRuling;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.files.packs.RulePacks;

/**
 * A case whose outcome a statute, regulation, handbook or county page states, in the words of {@code assess}: what
 * differs from a case in which everything is clear.
 */
record DecisionCase(
        String id, LocalDate election, String asOf, String facts, String notice, String outcome, String source) {

    private static final String CLEAR = """
            envelope=sealed voter_signature=signed official_signature=signed field.last_name=keyed
            field.first_name=keyed field.date_of_birth=keyed field.residence_address_line=keyed field.city=keyed
            field.zip=keyed field.id_last4=keyed field.statements_ticked=keyed identity=confirmed registration=in_time
            residence=in_county mail_ballots=none check_in=none other_county=not_listed other_envelope=none
            ballot=right_style place=own_place official_error=not_noted late_excuse=not_sworn entitlement=full
            party_ballot=none identification=shown signature_comparison=agrees vote_time=within_hours challenge=none
            eligibility=nothing_known court_order=none""";

    /** One value that the state's law gives, with where it is written. */
    record Parameter(String state, String rule, String value, String source) {}

    static List<DecisionCase> all() {
        return rows("cases.csv", 7).stream()
                .map(cell -> new DecisionCase(
                        cell[0], LocalDate.parse(cell[1]), cell[2], cell[3], cell[4], cell[5], cell[6]))
                .toList();
    }

    static List<Parameter> parameters() {
        return rows("parameters.csv", 4).stream()
                .map(cell -> new Parameter(cell[0], cell[1], cell[2], cell[3]))
                .toList();
    }

    String state() {
        return id.substring(0, 2);
    }

    /** The pack of the state, where the program brings one; else the federal floor. */
    String pack() {
        String own = "us-" + state().toLowerCase(Locale.ROOT);
        return RulePacks.bundled().contains(own) ? own : "us";
    }

    /** The rules as they stand once the office has signed what the pack has from memory or does not have. */
    ResolvedPack resolved() {
        return PackResolver.resolve(RulePacks.load(pack()), election, RulePacks.rulings(rulings()));
    }

    /** The facts, notices and rulings as a file for {@code assess}. */
    String file() {
        StringBuilder yaml = new StringBuilder("facts:\n");
        Map<String, String> words = new LinkedHashMap<>();
        for (String given : (CLEAR + " " + facts).strip().split("\\s+")) {
            words.put(given.substring(0, given.indexOf('=')), given.substring(given.indexOf('=') + 1));
        }
        words.forEach((fact, word) ->
                yaml.append("  ").append(fact).append(": ").append(word(word)).append('\n'));
        yaml.append("contests:\n  cast: [PRES, HOUSE-3, SENATE-7]\n  right: [PRES, HOUSE-3, SENATE-8]\n"
                + "  federal: [PRES, HOUSE-3]\n");
        if (!notice.isEmpty()) {
            yaml.append("notices_sent:\n  ").append(notice.replace(" ", ": ")).append('\n');
        }
        yaml.append("rulings:\n");
        for (CountyRuling ruling : rulings()) {
            yaml.append("  - {rule: ").append(ruling.rule());
            yaml.append(
                    ruling.value().isEmpty()
                            ? ""
                            : ", value: \"" + ruling.value().replace("\"", "\\\"") + "\"");
            yaml.append(", signed_by: Test, on: ").append(ruling.on());
            yaml.append(", ground: \"").append(ruling.ground()).append("\"}\n");
        }
        return yaml.toString();
    }

    private static String word(String word) {
        int stamp = word.indexOf('@');
        return stamp < 0
                ? word
                : "{value: " + word.substring(0, stamp) + ", received_at: " + word.substring(stamp + 1) + "}";
    }

    /** What the pack knows is never replaced: the office confirms what is from memory and gives what is missing. */
    private List<CountyRuling> rulings() {
        ResolvedPack law = PackResolver.resolve(RulePacks.load(pack()), election, List.of());
        List<CountyRuling> rulings = new ArrayList<>();
        for (ResolvedRule given : law.all()) {
            if (given.isKnown() && given.basis() == Basis.MEMORY && !isGiven(given.rule())) {
                rulings.add(ruling(given.rule().key(), "", "confirmed for the test"));
            }
        }
        for (Parameter parameter : parameters()) {
            if (parameter.state().equals(state())) {
                ResolvedRule given = law.of(Rule.find(parameter.rule()).orElseThrow());
                if (!isStatesOwn(given)) {
                    rulings.add(ruling(parameter.rule(), parameter.value(), parameter.source()));
                } else if (!given.isFirm()) {
                    rulings.add(ruling(parameter.rule(), "", parameter.source()));
                }
            }
        }
        return rulings;
    }

    private boolean isGiven(Rule rule) {
        return parameters().stream()
                .anyMatch(parameter ->
                        parameter.state().equals(state()) && parameter.rule().equals(rule.key()));
    }

    /** Known by the state's own pack; what only the federal floor says gives way to the state's law. */
    private boolean isStatesOwn(ResolvedRule given) {
        return given.isKnown() && !pack().equals("us");
    }

    private CountyRuling ruling(String rule, String value, String ground) {
        return new CountyRuling(rule, value, "Test", election.minusDays(30), ground);
    }

    private static List<String[]> rows(String name, int cells) {
        try (InputStream table = DecisionCase.class.getResourceAsStream("cases/" + name)) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(";", cells))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
