package org.proviso.ui.frame;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.PollEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The line about what is under way: there while it is, gone by itself, and asking nothing of the server at rest. */
class WorkUnderWayLineTest {

    private final UI page = new UI();
    private Optional<WorkUnderWay.Message> words = Optional.empty();
    private final WorkUnderWayLine line = new WorkUnderWayLine(List.of(() -> words));

    @BeforeEach
    void open() {
        UI.setCurrent(page);
        ComponentUtil.setData(page, WorkUnderWayLine.class, line);
        WorkUnderWayLine.look();
    }

    @AfterEach
    void close() {
        UI.setCurrent(null);
    }

    @Test
    void at_rest_nothing_is_said_and_nothing_asked() {
        assertThat(said()).isEmpty();
        assertThat(line.hasClassName("idle")).isTrue();
        assertThat(page.getPollInterval()).isEqualTo(-1);
    }

    @Test
    void what_is_under_way_is_said_until_it_is_done() {
        words = Optional.of(
                new WorkUnderWay.Message("Indexing the roll. Possible voters will appear when it is done.", "1 of 3"));
        WorkUnderWayLine.look();
        assertThat(said()).contains("Indexing the roll. Possible voters will appear when it is done.", "1 of 3");
        assertThat(line.hasClassName("idle")).isFalse();
        assertThat(page.getPollInterval()).isPositive();
        words = Optional.of(
                new WorkUnderWay.Message("Indexing the roll. Possible voters will appear when it is done.", "2 of 3"));
        poll();
        assertThat(said()).contains("2 of 3");
        words = Optional.empty();
        poll();
        assertThat(said()).isEmpty();
        assertThat(line.hasClassName("idle")).isTrue();
        assertThat(page.getPollInterval()).isEqualTo(-1);
    }

    @Test
    void a_screen_reader_is_told_the_sentence_politely_and_not_the_mark_or_each_figure() {
        List<Span> parts = line.getChildren().map(Span.class::cast).toList();
        assertThat(parts.get(0).getElement().getAttribute("aria-hidden")).isEqualTo("true");
        assertThat(parts.get(1).getElement().getAttribute("role")).isEqualTo("status");
        assertThat(parts.get(2).getElement().hasAttribute("role")).isFalse();
    }

    @Test
    void two_who_wait_on_one_page_do_not_end_each_others_asking() {
        var asking = AutoRefresh.begin(page, 500, () -> {});
        var other = AutoRefresh.begin(page, 500, () -> {});
        asking.remove();
        assertThat(page.getPollInterval()).isEqualTo(500);
        asking.remove();
        other.remove();
        assertThat(page.getPollInterval()).isEqualTo(-1);
    }

    private void poll() {
        ComponentUtil.fireEvent(page, new PollEvent(page, true));
    }

    private List<String> said() {
        return line.getChildren()
                .skip(1)
                .map(part -> ((Span) part).getText())
                .filter(text -> !text.isEmpty())
                .toList();
    }
}
