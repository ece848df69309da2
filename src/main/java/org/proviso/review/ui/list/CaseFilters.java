package org.proviso.review.ui.list;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;
import org.proviso.review.queue.QueueChoice;
import org.proviso.review.queue.QueueColumn;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueuePile;
import org.proviso.review.queue.QueueService;
import org.proviso.ui.UsDates;

/** What a list of cases is narrowed by. The values of a column are read when its field is opened, a page of them. */
public final class CaseFilters extends Composite<Div> {

    private static final List<CaseState> STATES = List.of(CaseState.OPEN, CaseState.IN_REVIEW, CaseState.PROPOSED);
    private static final List<Integer> DAYS = List.of(1, 2, 3, 7);

    private final QueueService queue;
    private final Consumer<QueueFilter> changed;
    private final Map<QueueColumn, HasValue<?, QueueChoice>> fields = new EnumMap<>(QueueColumn.class);
    private QueueFilter now;
    private boolean showing;

    public CaseFilters(QueueService queue, ElectionId electionId, Consumer<QueueFilter> changed) {
        this.queue = queue;
        this.changed = changed;
        this.now = QueueFilter.all(electionId);
        getContent().addClassName("filters");
        for (QueueColumn column : QueueColumn.values()) {
            getContent()
                    .add(
                            switch (column) {
                                case PILE, STATE, OUTLOOK, AGE -> fixed(column);
                                case REASON, LOCATION, PRECINCT, HOLDER, LANGUAGE -> found(column);
                            });
        }
    }

    /** Shows a filter in the fields. */
    public void show(QueueFilter filter) {
        now = filter;
        showing = true;
        fields.forEach((column, field) -> field.setValue(
                filter.value(column).map(value -> choice(column, value)).orElse(null)));
        showing = false;
    }

    /** The filter in words: {@code outlook reject, precinct 305}. Empty where it narrows nothing. */
    public String words() {
        return String.join(
                ", ",
                now.wanted().entrySet().stream()
                        .map(entry -> entry.getKey().words().toLowerCase(java.util.Locale.ROOT) + " "
                                + choice(entry.getKey(), entry.getValue()).words())
                        .toList());
    }

    private Component fixed(QueueColumn column) {
        Select<QueueChoice> select = new Select<>();
        select.setLabel(column.words());
        select.setItems(values(column).map(value -> choice(column, value)).toList());
        select.setEmptySelectionAllowed(true);
        select.setEmptySelectionCaption("Any");
        select.setItemLabelGenerator(item -> item == null ? "Any" : item.words());
        return listened(column, select);
    }

    private static Stream<String> values(QueueColumn column) {
        return switch (column) {
            case PILE -> Stream.of(QueuePile.values()).map(QueuePile::code);
            case STATE -> STATES.stream().map(CaseState::code);
            case OUTLOOK -> Stream.of(Recommendation.values()).map(Recommendation::code);
            case AGE -> DAYS.stream().map(String::valueOf);
            case REASON, LOCATION, PRECINCT, HOLDER, LANGUAGE -> Stream.of();
        };
    }

    private Component found(QueueColumn column) {
        ComboBox<QueueChoice> box = new ComboBox<>(column.words());
        box.setPlaceholder("Any");
        box.setClearButtonVisible(true);
        box.setItemLabelGenerator(QueueChoice::words);
        box.setItems(
                query -> queue
                        .choices(
                                now.electionId(),
                                column,
                                query.getFilter().orElse(""),
                                query.getOffset(),
                                query.getLimit())
                        .stream()
                        .map(choice -> worded(column, choice)));
        return listened(column, box);
    }

    private <C extends Component & HasValue<?, QueueChoice>> C listened(QueueColumn column, C field) {
        fields.put(column, field);
        field.addValueChangeListener(event -> {
            QueueChoice value = event.getValue();
            if (!showing) {
                changed.accept(now.with(column, value == null ? null : value.value()));
            }
        });
        return field;
    }

    private QueueChoice choice(QueueColumn column, String value) {
        return switch (column) {
            case STATE ->
                new QueueChoice(
                        value,
                        CaseState.valueOf(value.toUpperCase(java.util.Locale.ROOT))
                                .spoken());
            case OUTLOOK -> new QueueChoice(value, value.replace('_', ' '));
            case AGE -> new QueueChoice(value, UsDates.count(Integer.parseInt(value), "day") + " or more");
            case PILE, REASON, LOCATION, PRECINCT, HOLDER, LANGUAGE ->
                worded(column, new QueueChoice(value, queue.words(column, value)));
        };
    }

    private static QueueChoice worded(QueueColumn column, QueueChoice choice) {
        return column == QueueColumn.LANGUAGE
                ? new QueueChoice(choice.value(), Languages.words(choice.value()))
                : choice;
    }
}
