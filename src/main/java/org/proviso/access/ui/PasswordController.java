package org.proviso.access.ui;

import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.UserService;
import org.proviso.core.act.ActResult;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Changing one's own password. */
@Controller
class PasswordController {

    static final String PASSWORD = "/password";

    private static final String PAGE = "access/password";

    private final AccessService access;
    private final UserService users;

    PasswordController(AccessService access, UserService users) {
        this.access = access;
        this.users = users;
    }

    @GetMapping(PASSWORD)
    String form(Model model) {
        model.addAttribute("oneTime", access.signedIn().passwordIsOneTime());
        return PAGE;
    }

    @PostMapping(PASSWORD)
    ModelAndView change(@RequestParam String old, @RequestParam String chosen, @RequestParam String again) {
        boolean oneTime = access.signedIn().passwordIsOneTime();
        if (!chosen.equals(again)) {
            return refused(oneTime, "The two new passwords do not match.");
        }
        if (users.changeOwnPassword(old, chosen) instanceof ActResult.Refused<OfficeUser> refused) {
            return refused(oneTime, refused.words());
        }
        return oneTime ? new ModelAndView("redirect:/") : new ModelAndView(PAGE).addObject("changed", true);
    }

    private static ModelAndView refused(boolean oneTime, String why) {
        ModelAndView page = new ModelAndView(PAGE, HttpStatus.UNPROCESSABLE_ENTITY);
        return page.addObject("oneTime", oneTime).addObject("why", why);
    }
}
