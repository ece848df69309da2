package org.proviso.notices;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.Election;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ReasonText;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.review.Decision;

/**
 * What a voter is told of a decision: the reason in plain words, the law, which contests counted where a part did, and
 * what to do next. It never says how anybody voted. {@code votingLocation} is that of the address on the affirmation,
 * empty where the street file does not tell.
 */
record OutcomeLetter(
        Decision decision, Election election, ResolvedPack pack, BallotCatalog ballots, String votingLocation) {

    private static final Set<Reason> NOT_REGISTERED = EnumSet.of(Reason.NOT_REGISTERED, Reason.REGISTRATION_CANCELLED);

    String subject() {
        return switch (decision.as()) {
            case COUNT -> "Your ballot was counted";
            case COUNT_IN_PART -> "Part of your ballot was counted";
            case REJECT -> "Your ballot was not counted";
        };
    }

    List<String> paragraphs() {
        List<String> paragraphs = new ArrayList<>();
        switch (decision.as()) {
            case COUNT ->
                paragraphs.add("Your ballot was counted in full. You do not have to do anything. This letter replaces"
                        + " our earlier letter.");
            case COUNT_IN_PART -> inPart(paragraphs);
            case REJECT -> notCounted(paragraphs);
        }
        paragraphs.add("You can look this up free at any time with your receipt number and your birth date.");
        paragraphs.add(LetterParts.HELP);
        paragraphs.add(LetterParts.objections(election));
        return paragraphs;
    }

    private void notCounted(List<String> paragraphs) {
        paragraphs.add("Your provisional ballot was not counted. " + why());
        law().ifPresent(paragraphs::add);
        paragraphs.add("What you can do: " + whatToDo());
        paragraphs.add(appeal());
    }

    /** Whoever registered late, or has begun to, needs no new form. */
    private String whatToDo() {
        if (formComes()) {
            return "register now for the next election. A form comes with this letter.";
        }
        if (decision.reasons().contains(Reason.REGISTRATION_PENDING)) {
            return "call us to ask what your registration still needs for the next election.";
        }
        if (decision.reasons().contains(Reason.REGISTERED_LATE)) {
            return "call us before the next election. We will check with you that you are registered for it.";
        }
        return isNotRegistered()
                ? "your envelope is also your application to register. Call us before the next election. We will check with"
                        + " you that you are registered for it."
                : "before the next election, call us. We will check your record with you.";
    }

    /** Whether the office encloses a form to register: not where the envelope itself serves as the application. */
    boolean formComes() {
        boolean begun = decision.reasons().contains(Reason.REGISTERED_LATE)
                || decision.reasons().contains(Reason.REGISTRATION_PENDING);
        return decision.as() == DecisionOutcome.REJECT
                && isNotRegistered()
                && !begun
                && !pack.isYes(InformationRules.REGISTERS_THE_VOTER);
    }

    private boolean isNotRegistered() {
        return decision.reasons().stream().anyMatch(NOT_REGISTERED::contains);
    }

    private void inPart(List<String> paragraphs) {
        paragraphs.add("Part of your provisional ballot was counted. " + why());
        law().ifPresent(paragraphs::add);
        paragraphs.add("Counted: " + titles(decision.contests()) + ".");
        Set<String> lost = new LinkedHashSet<>(ballots.style(decision.ballot().styleCast())
                .map(style -> style.contestIds())
                .orElse(Set.of()));
        lost.removeAll(decision.contests());
        if (!lost.isEmpty()) {
            paragraphs.add("Not counted: " + titles(lost) + ".");
        }
        paragraphs.add(
                votingLocation.isEmpty()
                        ? "Before the next election, call us to ask where to vote."
                        : "For the address on your envelope, the place to vote is " + votingLocation + ".");
        paragraphs.add(appeal());
    }

    private static String appeal() {
        return "You may ask us how to object to this decision, and by when. Ask soon.";
    }

    /** Every reason in the pack's plain words, the main one first; the office's own words where the pack has none. */
    private String why() {
        return decision.reasons().stream()
                .map(reason -> pack.text(reason).map(ReasonText::notice).orElse("The reason: " + reason.words() + "."))
                .collect(Collectors.joining(" "));
    }

    private Optional<String> law() {
        String reference = decision.legalReference();
        if (!reference.isBlank()) {
            return Optional.of("The law: " + reference + ".");
        }
        return decision.reasons().stream()
                .findFirst()
                .map(reason -> pack.of(Rule.consequence(reason)))
                .filter(given -> given.isKnown())
                .map(given -> "The law: " + given.reference().words() + ".");
    }

    private String titles(Set<String> contestIds) {
        return contestIds.stream().map(ballots::contestTitle).collect(Collectors.joining("; "));
    }
}
