package org.proviso.practice;

import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Lazy;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * A first case to try, without signing in: an invented voter's envelope in four steps. All that was answered stands in
 * the address of the page; nothing is written anywhere.
 */
@Controller
class PracticeController {

    static final String PRACTICE = "/practice";
    static final String ENVELOPE = "/practice/on-the-envelope.png";
    static final String ON_FILE = "/practice/on-file.png";

    private static final String SAMPLE = "sample-cases/tamarack-general/signatures/";

    private final PracticeCase practice;

    PracticeController(@Lazy PracticeCase practice) {
        this.practice = practice;
    }

    @GetMapping(PRACTICE)
    String practice(
            @RequestParam(required = false) @Nullable String born,
            @RequestParam(required = false) @Nullable String voter,
            @RequestParam(required = false) @Nullable String signature,
            @RequestParam(required = false) @Nullable String outcome,
            Model model) {
        PracticeAnswers answers = new PracticeAnswers(born, voter, signature, outcome);
        PracticeAnswers.Step step = answers.next();
        model.addAttribute("answers", answers);
        model.addAttribute("step", step.name());
        model.addAttribute("number", step.ordinal() + 1);
        model.addAttribute("lines", practice.lines());
        model.addAttribute("recommendation", practice.recommendation());
        return "practice/practice";
    }

    @GetMapping(ENVELOPE)
    ResponseEntity<Resource> onTheEnvelope() {
        return picture("envelopes/G-1003.png");
    }

    @GetMapping(ON_FILE)
    ResponseEntity<Resource> onFile() {
        return picture("roll/T9418348-1.png");
    }

    private static ResponseEntity<Resource> picture(String file) {
        return ResponseEntity.ok().contentType(MediaType.IMAGE_PNG).body(new ClassPathResource(SAMPLE + file));
    }
}
