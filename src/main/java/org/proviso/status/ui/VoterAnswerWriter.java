package org.proviso.status.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.rules.Ask;
import org.proviso.status.LaterIdentification;
import org.proviso.status.LookupResult;
import org.proviso.status.OwnReason;
import org.proviso.status.VoterAsk;
import org.proviso.status.VoterCaseState;
import org.proviso.status.ui.VoterAnswer.Reading;
import org.proviso.status.ui.VoterAnswer.ToDo;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Puts an answer into sentences of the page's language. */
@Component
class VoterAnswerWriter {

    private final MessageSource messages;

    VoterAnswerWriter(MessageSource messages) {
        this.messages = messages;
    }

    VoterAnswer of(LookupResult.Found found, ReceiptNumber typed, Locale language) {
        PageWords words = new PageWords(messages, language);
        VoterStory story = new VoterStory(found, words);
        boolean identification = found.asks().stream().anyMatch(ask -> ask.ask() == Ask.IDENTIFICATION);
        return new VoterAnswer(
                title(found, words),
                mark(found.state()),
                CheckedReceipt.find(typed.value()).orElse(typed).value(),
                words.say(
                        "election",
                        found.election().name(),
                        words.day(found.election().date())),
                reasons(found, words),
                found.asks().stream().map(ask -> toDo(ask, found, words)).toList(),
                story.happened(),
                story.next(),
                identification ? papers(found.papers(), words) : List.of(),
                found.papers().statement(),
                words.say(waysAreSaid(found) ? "where.send.above" : "where.send"),
                hours(found, words),
                found.election().office());
    }

    private static String title(LookupResult.Found found, PageWords words) {
        boolean several =
                found.state() == VoterCaseState.WAITS_FOR_YOU && found.asks().size() > 1;
        return words.say("title." + found.state().code() + (several ? ".several" : ""));
    }

    /** The mark beside the word, only where there is an outcome. */
    private static String mark(VoterCaseState state) {
        return switch (state) {
            case COUNTED -> "mark full";
            case COUNTED_IN_PART -> "mark half";
            case REJECTED -> "mark";
            case RECEIVED, UNDER_REVIEW, WAITS_FOR_YOU, SENT_ON, NOT_VOTED -> "";
        };
    }

    /** English is the rule pack's own sentence. Other languages translate the usual sentences only. */
    private static List<Reading> reasons(LookupResult.Found found, PageWords words) {
        return found.reasons().stream().map(reason -> reading(reason, words)).toList();
    }

    private static Reading reading(OwnReason reason, PageWords words) {
        return reason.usual() && !words.isEnglish()
                ? new Reading(words.say("reason." + reason.reason().code()), false)
                : new Reading(reason.words(), !words.isEnglish());
    }

    private static ToDo toDo(VoterAsk ask, LookupResult.Found found, PageWords words) {
        String key = "ask." + ask.ask().code();
        List<String> how = new ArrayList<>(List.of(words.say(key + how(ask, found))));
        if (ask.ask() == Ask.IDENTIFICATION && found.papers().statement()) {
            how.add(words.say("ask.identification.statement"));
        }
        List<String> ways = ways(ask, found);
        if (!ways.isEmpty()) {
            how.add(words.say(
                    "ways",
                    words.oneOf(
                            ways.stream().map(way -> words.say("way." + way)).toList())));
        }
        return ask.until() == null
                ? new ToDo(
                        words.say(key),
                        found.untilTheMeeting().contains(ask.ask())
                                ? words.say(
                                        "until.meeting",
                                        found.election().office().phone())
                                : words.say("until.unknown"),
                        "",
                        how)
                : new ToDo(words.say(key), words.say("until"), words.moment(ask.until()), how);
    }

    /** Which sentence tells what to do: the pack may list what is accepted, or let it be shown in person only. */
    private static String how(VoterAsk ask, LookupResult.Found found) {
        if (ask.ask() != Ask.IDENTIFICATION) {
            return ".how";
        }
        if (!found.papers().accepts().isEmpty()) {
            return ".how.listed";
        }
        return ways(ask, found).equals(List.of("in_person")) ? ".how.in_person" : ".how";
    }

    private static List<String> ways(VoterAsk ask, LookupResult.Found found) {
        return found.ways().getOrDefault(ask.ask(), List.of());
    }

    /** Whether the page says of something how it may be sent, so that it does not offer the mail for all. */
    private static boolean waysAreSaid(LookupResult.Found found) {
        return found.asks().stream().anyMatch(ask -> !ways(ask, found).isEmpty());
    }

    /** What the pack lists, or the federal list where it applies. Where neither does, the voter is told to call. */
    private static List<String> papers(LaterIdentification papers, PageWords words) {
        List<String> lines = new ArrayList<>();
        if (papers.accepts().isEmpty()) {
            lines.add(words.say(papers.federalList() ? "papers.federal" : "papers.usual"));
        } else {
            lines.add(words.say("papers.accepts"));
            papers.accepts().forEach(kind -> lines.add(words.say("papers.accepts." + kind)));
        }
        lines.add(words.say("papers.call"));
        if (papers.statement()) {
            lines.add(words.say(papers.declarations().isEmpty() ? "papers.statement" : "papers.declared"));
            papers.declarations().forEach(kind -> lines.add(words.say("papers.declared." + kind)));
        }
        return lines;
    }

    private static Reading hours(LookupResult.Found found, PageWords words) {
        Map<String, String> hours = found.election().office().hours();
        String own = hours.get(words.language().getLanguage());
        return own == null ? new Reading(hours.getOrDefault("en", ""), !words.isEnglish()) : new Reading(own, false);
    }
}
