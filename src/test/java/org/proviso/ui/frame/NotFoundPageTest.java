package org.proviso.ui.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.Mockito.mock;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import org.junit.jupiter.api.Test;
import org.proviso.ui.AddressedEnvelope;
import org.proviso.ui.NothingHereException;

/** Our words about what is missing are shown, whatever they are; the router's never. */
class NotFoundPageTest {

    private static String said(NotFoundException missing) {
        NotFoundPage page = new NotFoundPage();
        int status = page.setErrorParameter(
                mock(BeforeEnterEvent.class), new ErrorParameter<>(NotFoundException.class, missing));
        assertThat(status).isEqualTo(404);
        return page.getElement().getTextRecursively();
    }

    @Test
    void what_is_missing_is_said() {
        assertThat(said(new NothingHereException("No batch 7 was made."))).contains("No batch 7 was made.");
    }

    @Test
    void neither_is_a_blank_envelope_number_one() {
        assertThatThrownBy(() -> AddressedEnvelope.number(" "))
                .isInstanceOfSatisfying(
                        NothingHereException.class,
                        missing -> assertThat(said(missing)).contains("This address has no envelope number."));
    }

    @Test
    void the_words_of_the_router_are_not_said() {
        assertThat(said(new NotFoundException("There is a route at /board")))
                .contains("There is no page at this address.")
                .doesNotContain("/board");
    }
}
