package org.proviso.status.ui;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;

/** The sentences of the page in one language, with dates as that language writes them. */
record PageWords(MessageSource messages, Locale language) {

    String say(String key, Object... parts) {
        return messages.getMessage(key, parts, language);
    }

    /** With its weekday, as a date is read the first time. */
    String weekday(LocalDate day) {
        return day(day, "date.weekday");
    }

    String day(LocalDate day) {
        return day(day, "date.day");
    }

    private String day(LocalDate day, String pattern) {
        return DateTimeFormatter.ofPattern(say(pattern), language).format(day);
    }

    /** {@code Friday, November 13, 2026, 5:00 pm}; the hour is never torn from its am or pm. */
    String moment(LocalDateTime moment) {
        String hour = DateTimeFormatter.ofPattern("h:mm\u00a0a", Locale.US)
                .format(moment)
                .toLowerCase(Locale.ROOT);
        return say("moment", weekday(moment.toLocalDate()), hour);
    }

    /** {@code identification, your signature and proof}. */
    String listed(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : say("and", String.join(", ", words.subList(0, last)), words.get(last));
    }

    /** {@code in person, by mail or by fax}. */
    String oneOf(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : say("or", String.join(", ", words.subList(0, last)), words.get(last));
    }

    boolean isEnglish() {
        return language.getLanguage().equals("en");
    }
}
