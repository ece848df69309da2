package org.proviso.core.rules;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.calendar.DeadlineRule;

/**
 * A pack as it stands for one election date, with the county's rulings applied. Its hash is stored with every
 * assessment, so that anyone can see under which rules it was made.
 */
public final class ResolvedPack {

    private final RulePack pack;
    private final LocalDate electionDate;
    private final Map<Rule, ResolvedRule> given;
    private final String hash;

    ResolvedPack(RulePack pack, LocalDate electionDate, Map<Rule, ResolvedRule> given) {
        this.pack = pack;
        this.electionDate = electionDate;
        this.given = given;
        this.hash = computedHash();
    }

    public RulePack pack() {
        return pack;
    }

    public LocalDate electionDate() {
        return electionDate;
    }

    /** What the pack gives for a rule; unknown where it says nothing. */
    public ResolvedRule of(Rule rule) {
        ResolvedRule found = given.get(rule);
        return found == null ? ResolvedRule.nothing(rule) : found;
    }

    public List<ResolvedRule> all() {
        return List.copyOf(given.values());
    }

    public boolean isYes(Rule rule) {
        return of(rule).isYes();
    }

    public String word(Rule rule) {
        return of(rule).word();
    }

    public List<String> words(Rule rule) {
        return of(rule).value() instanceof RuleValue.Words words ? words.words() : List.of();
    }

    public Optional<DeadlineRule> deadline(Rule rule) {
        return of(rule).value() instanceof RuleValue.Dated dated ? Optional.of(dated.rule()) : Optional.empty();
    }

    public Optional<Consequence> consequence(Reason reason) {
        return of(Rule.consequence(reason)).value() instanceof RuleValue.Follows follows
                ? Optional.of(follows.consequence())
                : Optional.empty();
    }

    /** The hour meant by close of business; 5 pm where the pack gives none (common practice). */
    public LocalTime officeCloses() {
        return of(Rules.OFFICE_CLOSES).value() instanceof RuleValue.Time time ? time.time() : LocalTime.of(17, 0);
    }

    /** A reason's place when several are named; reasons the rule pack does not order come last, in our own order. */
    public int precedence(Reason reason) {
        int place = words(Rules.REASON_ORDER).indexOf(reason.code());
        return place >= 0 ? place : Reason.values().length + reason.ordinal();
    }

    /** The sentence the voter reads. */
    public Optional<ReasonText> text(Reason reason) {
        return Optional.ofNullable(pack.reasons().get(reason));
    }

    /** SHA-256 over every rule's value, reference and basis, in the order of the vocabulary, in hexadecimal. */
    public String hash() {
        return hash;
    }

    private String computedHash() {
        String lines = given.values().stream()
                .filter(resolved -> !(resolved.isAbsent() && StateRules.joinedLater(resolved.rule())))
                .map(ResolvedRule::line)
                .collect(Collectors.joining("\n"));
        String text = pack.id() + " " + electionDate + "\n" + lines + "\n";
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** One of an enum's constants by the word the pack gives, if it gives one. */
    public <E extends Enum<E> & Code> Optional<E> code(Rule rule, Class<E> type) {
        return Code.find(type, word(rule));
    }
}
