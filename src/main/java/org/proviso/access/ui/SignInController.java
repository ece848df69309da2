package org.proviso.access.ui;

import org.proviso.access.AccessService;
import org.proviso.access.DemoSignIns;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The sign-in page. In a demonstration it lists the accounts anyone may use. */
@Controller
class SignInController {

    static final String SIGN_IN = "/sign-in";
    static final String SIGN_OUT = "/sign-out";

    private final AccessService access;
    private final DemoSignIns demo;

    SignInController(AccessService access, DemoSignIns demo) {
        this.access = access;
        this.demo = demo;
    }

    @GetMapping(SIGN_IN)
    String signIn(
            @RequestParam(required = false) String wrong,
            @RequestParam(required = false) String wait,
            @RequestParam(required = false) String out,
            Model model) {
        if (!access.signedIn().isVisitor()) {
            return "redirect:/";
        }
        model.addAttribute("wrong", wrong != null);
        model.addAttribute("wait", wait != null);
        model.addAttribute("out", out != null);
        model.addAttribute("demo", demo.all());
        model.addAttribute("demoPassword", demo.password());
        return "access/sign-in";
    }

    /** A page with one button, for anyone who opens its address. */
    @GetMapping(SIGN_OUT)
    String signOut(Model model) {
        model.addAttribute("who", access.signedIn().fullName());
        return "access/sign-out";
    }
}
