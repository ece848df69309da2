package org.proviso.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.proviso.core.CheckedReceipt;

/**
 * What WCAG 2.2 asks of forms. 3.3.1 Error Identification: after a refused act the box is marked as wrong, and a screen reader
 * says with the box what is wrong. 3.3.7 Redundant Entry: what was typed once is not typed again.
 */
@Journey
class FormsJourneyTest {

    /** Each box that is marked as wrong, by its label, with what is said of it or of the group of boxes it is in. */
    private static final String WRONG = """
            const seen = root => [...root.querySelectorAll('*')].flatMap(one => [one, ...(one.shadowRoot ? seen(one.shadowRoot) : [])]);
            const said = one => [one, one.closest('[role=group]')].filter(Boolean)
                .flatMap(part => ['aria-errormessage', 'aria-describedby'].map(name => part.getAttribute(name) || ''))
                .flatMap(ids => ids.split(' '))
                .map(id => id && one.getRootNode().getElementById(id)).filter(Boolean)
                .map(part => part.textContent.trim()).filter(Boolean).join(' ');
            const label = one => (one.labels && one.labels[0] && one.labels[0].textContent.trim())
                || one.getAttribute('aria-label') || [...(one.getAttribute('aria-labelledby') || '').split(' ')]
                    .map(id => one.getRootNode().getElementById(id)?.textContent.trim() || '').join(' ').trim();
            return seen(document).filter(one => one.getAttribute('aria-invalid') === 'true' && one.getClientRects().length > 0)
                .map(one => label(one) + ': ' + said(one));""";

    private static List<?> wrong(Browser browser) {
        browser.rest();
        return (List<?>) browser.script(WRONG);
    }

    @Test
    void what_is_wrong_is_said_with_the_box_it_is_about(Browser browser) {
        browser.go("/status");
        browser.find("form.fields button").click();
        browser.rest();
        assertThat(wrong(browser)).first().asString().startsWith("Receipt number: Enter ");

        browser.signIn("intake").go("/intake/receive");
        browser.fill("receipt", "1111-1111-2").press(Keys.TAB);
        assertThat(wrong(browser)).singleElement().asString().matches("Receipt number: .*digit.*");

        browser.go("/intake/transmittals");
        browser.fill("issued", "ten").click("Record transmittal");
        assertThat(wrong(browser))
                .anySatisfy(one -> assertThat(one).isEqualTo("Issued: Enter a whole number."))
                .anySatisfy(one -> assertThat(one).asString().startsWith("Voting location: "));

        browser.signIn("admin").go("/set-up/users");
        browser.click("Create account");
        browser.find("vaadin-dialog-overlay button.first").click();
        assertThat(wrong(browser)).anySatisfy(one -> assertThat(one).isEqualTo("Name: Required."));

        browser.signIn("board1").go("/board");
        browser.click("Call a session…");
        browser.find("vaadin-date-picker input").sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, Keys.TAB);
        browser.find("vaadin-dialog-overlay button.first").click();
        assertThat(wrong(browser)).anySatisfy(one -> assertThat(one).asString().endsWith(": Enter the date and time."));

        browser.signIn("reviewer").go("/review/case/G-1098");
        browser.look().press("t");
        browser.waitFor("Compare signature");
        browser.go("/review/case/G-1098");
        browser.look().press("d");
        browser.find("vaadin-dialog-overlay button.first").click();
        assertThat(wrong(browser))
                .anySatisfy(one -> assertThat(one).isEqualTo("Proposed outcome: Choose a proposed outcome."));
    }

    @Test
    void what_belongs_to_a_bag_is_typed_once_and_a_voter_does_not_type_the_receipt_again(Browser browser) {
        browser.signIn("intake").go("/intake/receive");
        browser.fill("place", "Prospect School Gym").fill("envelope", "G-2401");
        browser.fill("receipt", CheckedReceipt.of("61020014").value()).press(Keys.ENTER);
        browser.waitFor("not keyed");
        assertThat(browser.find("#place").getAttribute("value")).isEqualTo("Prospect School Gym");
        assertThat(browser.find("#envelope").getAttribute("value")).isEmpty();

        browser.driver().manage().deleteAllCookies();
        browser.go("/status").fill("receipt", "4817-2206-5");
        browser.find("form.fields button").click();
        browser.rest();
        assertThat(browser.find("#receipt").getAttribute("value")).isEqualTo("4817-2206-5");
    }
}
