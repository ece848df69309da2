package org.proviso.notices.ui;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.proviso.core.Election;
import org.proviso.notices.Letter;
import org.proviso.notices.MailTo;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Letters as the office writes them, to invented people, and what makes a PDF of them, without a server. */
final class Letters {

    private Letters() {}

    static LetterPdf pdf() {
        ClassLoaderTemplateResolver templates = new ClassLoaderTemplateResolver();
        templates.setPrefix("templates/");
        templates.setSuffix(".html");
        SpringTemplateEngine engine = new SpringTemplateEngine();
        engine.setTemplateResolver(templates);
        return new LetterPdf(engine);
    }

    static Letter to(String name) {
        return new Letter(
                new Election.Office("Tamarack County Election Office", "100 Court St", "555-0100", "", Map.of()),
                List.of(
                        "Tamarack County Election Office",
                        "100 Court St, Port Ansel",
                        "555-0100",
                        "elections@example.org"),
                new MailTo(name, "340 W Osprey St, Birch Hall, 49874", false),
                "Action needed on your provisional ballot",
                List.of(
                        "Tamarack County Primary, Tuesday, August 4, 2026. Your receipt number: EHY7-5BDD.",
                        "We have your provisional ballot. We cannot count it yet. You did not show identification when"
                                + " you voted.",
                        "What to do: Bring us one kind of identification that the law accepts, or send us a copy. Call"
                                + " us if you are not sure which kinds we can accept.",
                        "Deadline: it must reach us by Tuesday, August 11, 2026, at 5:00 pm. A postmark is not"
                                + " enough.",
                        "Where: Tamarack County Election Office, 100 Court St, Port Ansel. You may come in person or"
                                + " write to us. Call us to ask how else you may send it.",
                        "If we do not hear from you in time, your ballot may not count.",
                        "This is free. Call us if you need help, another language, large print or another format."),
                "en",
                false);
    }

    static List<Letter> many(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> to("Voter Number " + number))
                .toList();
    }
}
