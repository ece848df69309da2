package org.proviso.core.adjudication.questions;

import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FieldFact;
import org.proviso.core.adjudication.facts.Identity;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

/** Is a field of the affirmation given? An omission that does not matter to deciding whether the voter is qualified has no effect (52 USC 10101(a)(2)(B), from memory). */
final class FieldGiven extends Asked<FieldFact> {

    private static final Map<String, String> ASKS = Map.of(
            "last_name", "Is the last name given?",
            "first_name", "Is the first name given?",
            "date_of_birth", "Is the birth date given?",
            "residence_address_line", "Is the address given?",
            "city", "Is the city given?",
            "zip", "Is the ZIP code given?",
            "id_last4", "Are the last four digits of the ID number given?",
            "statements_ticked", "Are the sworn statements ticked?");

    private final Fact<FieldFact> fact;

    FieldGiven(Fact<FieldFact> fact) {
        super("envelope." + fact.key(), Heading.ENVELOPE, asks(fact), fact);
        this.fact = fact;
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(fact, Fact.IDENTITY);
    }

    @Override
    Answer of(FieldFact word, FactReader facts, Setting setting) {
        return word == FieldFact.KEYED
                ? setting.clear("Yes")
                : notGiven(word == FieldFact.NOT_YET_KEYED, facts, setting);
    }

    /** Empty, and nobody noted why: it is weighed as a field not keyed yet. */
    @Override
    Answer ofUnknown(FactReader facts, Setting setting) {
        return notGiven(true, facts, setting);
    }

    private Answer notGiven(boolean notYet, FactReader facts, Setting setting) {
        if (!setting.pack().of(Rules.REQUIRED_FIELDS).isKnown()) {
            return setting.ruleUnknown(Rules.REQUIRED_FIELDS);
        }
        return setting.pack().words(Rules.REQUIRED_FIELDS).contains(name(fact))
                ? leftOut(notYet, facts.one(Fact.IDENTITY), setting)
                : setting.clear("No, and the law does not ask for it", Rules.REQUIRED_FIELDS);
    }

    private Answer leftOut(boolean notYet, @Nullable Identity identity, Setting setting) {
        return switch (setting.pack().word(Rules.OMISSIONS_MATTER)) {
            case "never" -> setting.clear("No, which does not matter", Rules.OMISSIONS_MATTER);
            case "always" -> notYet ? emptySoFar(setting, incomplete(setting)) : incomplete(setting);
            case "when_voter_unknown" -> matters(notYet, identity, setting);
            default -> setting.ruleUnknown(Rules.OMISSIONS_MATTER);
        };
    }

    /** Only where a search could not tell who the voter is does the empty field matter. */
    private Answer matters(boolean notYet, @Nullable Identity identity, Setting setting) {
        Answer known = setting.clear("No, but the voter is known without it", Rules.OMISSIONS_MATTER);
        String missing = "a field is empty, which matters only if nobody can tell who the voter is";
        if (identity == null || identity == Identity.SEVERAL_FIT || identity == Identity.ONE_FITS_WELL) {
            return setting.open(missing, Rules.OMISSIONS_MATTER);
        }
        return switch (identity) {
            case CONFIRMED -> known;
            case NOT_ON_ROLL -> notYet ? emptySoFar(setting, incomplete(setting)) : incomplete(setting);
            case NONE_FITS -> setting.open(missing, incomplete(setting));
            default -> setting.open(missing, known);
        };
    }

    private Answer emptySoFar(Setting setting, Answer expected) {
        return setting.open(fact.meaning() + " is empty so far", expected);
    }

    private static Answer incomplete(Setting setting) {
        return setting.stands(Reason.AFFIRMATION_INCOMPLETE, Rules.OMISSIONS_MATTER, Rules.REQUIRED_FIELDS);
    }

    private static String asks(Fact<FieldFact> fact) {
        return Objects.requireNonNull(ASKS.get(name(fact)), "every field of the affirmation has its question");
    }

    private static String name(Fact<FieldFact> fact) {
        return fact.key().substring("field.".length());
    }
}
