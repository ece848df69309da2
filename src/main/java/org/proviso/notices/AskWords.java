package org.proviso.notices;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.Election;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/**
 * What a cure notice says of an ask: what is missing, and what to bring or sign. What is accepted, and in which ways it may
 * reach the office, is said where the rule pack says it. Written for grade 6 to 8.
 */
record AskWords(String missing, String toDo) {

    private static final String FIRST_TIME_MAIL = "first_time_mail";

    /** The kinds of identification that a pack may accept, as a voter reads them. */
    static final Map<String, String> ACCEPTED = Map.of(
            "photo_id", "a photo ID",
            "document_with_name_and_address", "a paper with your name and address on it",
            "number_on_affidavit", "your ID number on a sworn statement",
            "personal_acknowledgment", "the word of a person who knows you, where the law allows it");

    /** What makes a sworn statement take the place of identification. */
    static final Map<String, String> DECLARED = Map.of(
            "reasonable_impediment", "something kept you from getting identification",
            "religious_objection", "your religion does not let you have your picture taken",
            "indigence", "you cannot pay for identification",
            "natural_disaster", "you have no identification because of a natural disaster",
            "identity_affidavit", "you swear who you are");

    static final Map<String, String> WAYS = Map.of(
            "in_person", "in person",
            "mail", "by mail",
            "email", "by email",
            "fax", "by fax",
            "upload", "on our website",
            "text_message", "by text message",
            "phone", "by phone");

    /** The ways that need a number or an address of which the program knows nothing. */
    private static final Set<String> TO_ASK_FOR = Set.of("fax", "upload", "text_message");

    /** Where to go and how to send it; ways that the pack does not give are to be asked for. */
    static String where(Ask ask, Election election, ResolvedPack pack) {
        List<String> ways = pack.words(Rule.cureWays(ask));
        String where = "Where: " + LetterParts.office(election) + ". ";
        if (ways.isEmpty()) {
            return where + "You may come in person or write to us. Call us to ask how else you may send it.";
        }
        String email = ways.contains("email") && !election.office().email().isBlank()
                ? " Our email: " + election.office().email() + "."
                : "";
        String callUs = ways.stream().anyMatch(TO_ASK_FOR::contains)
                ? " Call us to ask for the number or the address to send it to."
                : "";
        return where + "You may do this " + oneOf(ways, WAYS) + "." + email + callUs;
    }

    private static String identification(ResolvedPack pack) {
        List<String> ways = pack.words(Rule.cureWays(Ask.IDENTIFICATION));
        String copy =
                ways.isEmpty() || ways.stream().anyMatch(way -> !way.equals("in_person")) ? ", or send us a copy" : "";
        return accepted(pack, copy) + statement(pack);
    }

    private static String accepted(ResolvedPack pack, String copy) {
        List<String> accepts = pack.words(InformationRules.ID_ACCEPTS);
        if (!accepts.isEmpty()) {
            return "Bring us one of these" + copy + ". " + each("We accept ", "We also accept ", accepts, ACCEPTED);
        }
        return pack.word(Rules.ID_REQUIRED_OF).equals(FIRST_TIME_MAIL)
                // 52 USC 21083(b)(2)(A)
                ? "Bring us a photo ID that has not expired" + copy
                        + ". Or use a paper with your name and address on it."
                        + " It may be a current utility bill, a bank statement, a paycheck, a government check or"
                        + " another government paper."
                : "Bring us identification that the law accepts" + copy + ". Call us if you are"
                        + " not sure which kinds we can accept.";
    }

    private static String statement(ResolvedPack pack) {
        if (!pack.isYes(Rules.DECLARATION_EXCUSES)) {
            return "";
        }
        List<String> declared = pack.words(InformationRules.ID_DECLARATIONS);
        return (declared.isEmpty()
                        ? " If you have none, you may sign a statement instead."
                        : " "
                                + each(
                                        "You may sign a statement instead if ",
                                        "You may also sign it if ",
                                        declared,
                                        DECLARED))
                + " Ask us for the form.";
    }

    /** A short sentence for each. */
    private static String each(String first, String others, List<String> codes, Map<String, String> words) {
        List<String> sentences = codes.stream()
                .map(code -> (code.equals(codes.get(0)) ? first : others) + said(code, words) + ".")
                .toList();
        return String.join(" ", sentences);
    }

    /** {@code in person, by mail or by fax}. */
    private static String oneOf(List<String> codes, Map<String, String> words) {
        List<String> said = codes.stream().map(code -> said(code, words)).toList();
        int last = said.size() - 1;
        return last < 1 ? String.join("", said) : String.join(", ", said.subList(0, last)) + " or " + said.get(last);
    }

    private static String said(String code, Map<String, String> words) {
        return words.getOrDefault(code, code.replace('_', ' '));
    }

    static AskWords of(Ask ask, Reason reason, ResolvedPack pack) {
        return switch (ask) {
            case IDENTIFICATION ->
                new AskWords("You did not show identification when you voted.", identification(pack));
            case SIGNATURE -> new AskWords(signature(reason), "Sign the statement on your envelope at our office.");
            case SIGNATURE_DIFFERENCE ->
                new AskWords(
                        "The signature on your envelope does not look like the one we have on file.",
                        "Tell us in a signed letter whether you signed the envelope yourself.");
            case AFFIRMATION ->
                new AskWords(
                        "The statement on your envelope is missing something we need to know who you are.",
                        "Call us to ask what is missing. Then fill it in at our office, or send it to us in writing.");
            case REGISTRATION ->
                new AskWords(
                        "Your voter registration is not finished.",
                        "Call us to ask what your registration still needs. Then bring it to us, or send it.");
            case ELIGIBILITY ->
                new AskWords(
                        "We do not have everything we need to show that you had the right to vote.",
                        "Bring us proof of your right to vote, or send us a copy. Call us to ask what we can accept.");
        };
    }

    private static String signature(Reason reason) {
        return reason == Reason.MARK_NOT_WITNESSED
                ? "You signed your envelope with a mark, and no witness signed beside it."
                : "You did not sign the statement on your ballot envelope.";
    }
}
