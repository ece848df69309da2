package org.proviso.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.DescriptionList.Description;
import com.vaadin.flow.component.html.DescriptionList.Term;
import com.vaadin.flow.component.html.Span;

/** Terms and their values, in two columns. */
public final class LabeledValues extends DescriptionList {

    public LabeledValues() {
        addClassName("facts");
    }

    public LabeledValues add(String term, String words) {
        return add(term, new Span(words));
    }

    /** A number, in the number font. */
    public LabeledValues number(String term, String digits) {
        Span number = new Span(digits);
        number.addClassName("num");
        return add(term, number);
    }

    public LabeledValues add(String term, Component... what) {
        add(new Term(term), new Description(what));
        return this;
    }
}
