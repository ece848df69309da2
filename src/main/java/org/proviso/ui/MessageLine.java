package org.proviso.ui;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;

/** The message line: the result of the last act. It stays until the next act and is read aloud. */
public final class MessageLine extends Div {

    public MessageLine() {
        addClassName("said");
        getElement().setAttribute("role", "status");
    }

    /** An act was recorded. */
    public static void done(String words) {
        line().say(words, "done");
    }

    /** An act was refused, or cannot be done; nothing was written. */
    public static void refused(String words) {
        line().say(words, "refused");
    }

    /** Clears the message. */
    public static void nothing() {
        line().say("", "done");
    }

    /** The current message. */
    public static String words() {
        return line().getText();
    }

    /** Puts the earlier message in front of the current one. */
    public static void after(String before) {
        MessageLine line = line();
        String now = line.getText();
        line.setText(now.equals(before) ? now : (before + " " + now).strip());
        line.setClassName("spoken", !line.getText().isEmpty());
    }

    public void here(UI ui) {
        ComponentUtil.setData(ui, MessageLine.class, this);
    }

    private static MessageLine line() {
        MessageLine line = ComponentUtil.getData(UI.getCurrent(), MessageLine.class);
        return line == null ? new MessageLine() : line;
    }

    private void say(String words, String kind) {
        setText(words);
        setClassName("refused", "refused".equals(kind) && !words.isEmpty());
        setClassName("spoken", !words.isEmpty());
    }
}
