package org.proviso.review.ui.desk;

import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.function.Predicate;
import org.proviso.core.PersonName;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.ui.field.ActDialog;

/** Records a search for the voter, with the whole check list. */
final class SearchSheet extends CaseSheet {

    /** The fields of the sheet. */
    private record Fields(
            CheckboxGroup<SearchPlace> places, RadioButtonGroup<SearchFound> found, TextField sameAs, TextArea note) {

        static Fields empty() {
            return new Fields(
                    new CheckboxGroup<>("Places searched"),
                    new RadioButtonGroup<>("Result"),
                    new TextField("Same voter as envelope (optional)"),
                    words("Note"));
        }
    }

    SearchSheet(CasePageContext desk) {
        this(desk, Fields.empty());
    }

    private SearchSheet(CasePageContext desk, Fields fields) {
        super("Record a search for the voter of envelope " + desk.number(), "Record search", record(desk, fields));
        fields.places().setItems(SearchPlace.values());
        fields.places().setItemLabelGenerator(SearchPlace::words);
        fields.places().addClassName("in-lines");
        fields.found().setItems(SearchFound.values());
        fields.found().setItemLabelGenerator(SearchFound::words);
        fields.found().addClassName("in-lines");
        fields.sameAs().setWidthFull();
        with("Search all five places before you record that a voter is not registered.");
        unread(desk);
        with(fields.places(), fields.found(), fields.sameAs(), fields.note());
    }

    /** Whoever is not found may stand in a row that could not be read. */
    private void unread(CasePageContext desk) {
        PersonName name = desk.file().report().envelope().affirmation().name();
        String words = desk.acts()
                .find()
                .unread(desk.key().electionId(), name.last() + " " + name.first())
                .words();
        if (!words.isEmpty()) {
            Paragraph caution = new Paragraph(words);
            caution.addClassName("warn");
            with(caution);
        }
    }

    private static Predicate<RefusalDisplay> record(CasePageContext desk, Fields fields) {
        return refusing -> {
            SearchFound found = fields.found().getValue();
            if (found == null) {
                return ActDialog.refuse(fields.found(), "Enter the result of the search.");
            }
            String sameAs = fields.sameAs().getValue().strip();
            return desk.fromSheet(
                    refusing,
                    "Envelope " + desk.number() + ": search recorded.",
                    seen -> desk.acts()
                            .searches()
                            .record(new RecordSearch(
                                    seen.key(),
                                    seen.version(),
                                    fields.places().getValue(),
                                    found,
                                    OffRollReason.NOT_ON_THE_ROLL,
                                    sameAs.isEmpty() ? null : sameAs,
                                    fields.note().getValue())));
        };
    }
}
