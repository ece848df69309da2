package org.proviso.status.ui;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.proviso.core.rules.Ask;
import org.proviso.status.LookedUp;
import org.proviso.status.OwnState;
import org.proviso.status.ui.OwnAnswer.Reading;
import org.proviso.status.ui.OwnAnswer.ToDo;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Puts an answer into sentences of the page's language. */
@Component
class OwnAnswers {

    private final MessageSource messages;

    OwnAnswers(MessageSource messages) {
        this.messages = messages;
    }

    OwnAnswer of(LookedUp.Found found, Locale language) {
        String state = found.state().code();
        return new OwnAnswer(
                title(found, language),
                mark(found.state()),
                say(language, "election", found.electionName(), day(found.electionDate(), language, "date.day")),
                reasons(found, language),
                found.asks().stream().map(ask -> toDo(ask, language)).toList(),
                until(found, language),
                List.of(say(language, "happened." + state, since(found, language))),
                List.of(say(language, "next." + state)),
                found.office());
    }

    private String title(LookedUp.Found found, Locale language) {
        boolean several =
                found.state() == OwnState.WAITS_FOR_YOU && found.asks().size() > 1;
        return say(language, "title." + found.state().code() + (several ? ".several" : ""));
    }

    /** The mark beside the word, only where there is an outcome. */
    private static String mark(OwnState state) {
        return switch (state) {
            case COUNTED -> "mark full";
            case COUNTED_IN_PART -> "mark half";
            case REJECTED -> "mark";
            case RECEIVED, UNDER_REVIEW, WAITS_FOR_YOU, SENT_ON, NOT_VOTED -> "";
        };
    }

    /** A pack may say a reason in its own words; the translation is of the usual ones. */
    private List<Reading> reasons(LookedUp.Found found, Locale language) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < found.grounds().size(); i++) {
            String words = found.reasons().get(i);
            String key = "reason." + found.grounds().get(i).code();
            boolean usual = words.equals(say(Locale.US, key));
            boolean english = language.getLanguage().equals("en");
            readings.add(new Reading(usual ? say(language, key) : words, !english && !usual));
        }
        return readings;
    }

    private ToDo toDo(Ask ask, Locale language) {
        return new ToDo(say(language, "ask." + ask.code()), say(language, "ask." + ask.code() + ".how"));
    }

    private String until(LookedUp.Found found, Locale language) {
        LocalDateTime until = found.asksUntil();
        if (until == null) {
            return found.asks().isEmpty() ? "" : say(language, "until.unknown");
        }
        String hour =
                DateTimeFormatter.ofPattern("h:mm a", Locale.US).format(until).toLowerCase(Locale.ROOT);
        return say(language, "until", day(until.toLocalDate(), language, "date.weekday"), hour);
    }

    private String since(LookedUp.Found found, Locale language) {
        return day(found.changedAt().toLocalDate(), language, "date.weekday");
    }

    private String day(LocalDate day, Locale language, String pattern) {
        return DateTimeFormatter.ofPattern(say(language, pattern), language).format(day);
    }

    private String say(Locale language, String key, Object... parts) {
        return messages.getMessage(key, parts, language);
    }
}
