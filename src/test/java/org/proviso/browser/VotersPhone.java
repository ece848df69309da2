package org.proviso.browser;

import java.time.LocalDate;

/** A voter who looks up the own ballot on a telephone. */
final class VotersPhone {

    private VotersPhone() {}

    /** What the page says for this receipt and birth date; nobody is signed in. */
    static String answer(Browser browser, String receipt, LocalDate born) {
        browser.driver().manage().deleteAllCookies();
        browser.resize(Window.PHONE);
        browser.go("/status");
        browser.fill("receipt", receipt);
        browser.fill("month", String.valueOf(born.getMonthValue()));
        browser.fill("day", String.valueOf(born.getDayOfMonth()));
        browser.fill("year", String.valueOf(born.getYear()));
        browser.find("form.fields button[type=submit]").click();
        browser.rest();
        return browser.text();
    }
}
