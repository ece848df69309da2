package org.proviso.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.server.HttpStatusCode;
import com.vaadin.flow.server.VaadinResponse;
import com.vaadin.flow.server.VaadinSession;
import com.vaadin.flow.server.streams.DownloadEvent;
import com.vaadin.flow.server.streams.DownloadHandler;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.files.table.TableFormat;
import org.proviso.files.table.TableHead;

/**
 * Two links under a list, which keep it as a CSV or an XLSX file. The list is read anew from the room's services when a
 * link is followed, so whoever may no longer see the page gets no file, and the file is of the moment that it names.
 */
public final class DownloadLinks extends Composite<Span> {

    private final String title;
    private final Map<TableFormat, Anchor> links = new EnumMap<>(TableFormat.class);
    private Supplier<String> filter = () -> "";

    private DownloadLinks(String title) {
        this.title = title;
        getContent().addClassNames("downloads", "small");
        getContent().add(new Span("Download: "));
        for (TableFormat format : TableFormat.values()) {
            Anchor link = new Anchor();
            link.setText(format.name());
            link.setAriaLabel(format.name() + ": " + title);
            link.setRouterIgnore(true);
            link.getElement().setAttribute("download", true);
            links.put(format, link);
            getContent().add(link, new Span(" "));
        }
    }

    /** Links to addresses of their own, given with {@link #lead}. */
    public static DownloadLinks toAddresses(String title) {
        return new DownloadLinks(title);
    }

    /** Links to a table of an election, or (null) of the office. {@code table} reads it anew. */
    public static DownloadLinks of(
            String title, @Nullable ElectionId electionId, Supplier<? extends ListedRows> table) {
        return to(title, electionId, () -> table);
    }

    /** Links to a list that the page fetches a screen at a time, as it is narrowed when a link is followed. */
    public static DownloadLinks of(String title, @Nullable ElectionId electionId, RowGrid<?> list) {
        return to(title, electionId, () -> {
            ListedRows listed = list.listed();
            return () -> listed;
        });
    }

    private static DownloadLinks to(
            String title, @Nullable ElectionId electionId, Supplier<Supplier<? extends ListedRows>> page) {
        DownloadLinks links = new DownloadLinks(title);
        links.links.forEach(
                (format, link) -> link.setHref((DownloadHandler) event -> links.send(format, electionId, page, event)));
        return links;
    }

    /** What narrows the list now, in words. */
    public DownloadLinks narrowed(Supplier<String> words) {
        filter = words;
        return this;
    }

    public void lead(Function<TableFormat, String> address) {
        links.forEach((format, link) -> link.setHref(address.apply(format)));
    }

    private void send(
            TableFormat format,
            @Nullable ElectionId electionId,
            Supplier<Supplier<? extends ListedRows>> page,
            DownloadEvent event) {
        VaadinResponse answer = event.getResponse();
        answer.setHeader("Cache-Control", "no-store");
        event.setContentType(format.contentType());
        event.setFileName(format.fileName(title));
        ListMoments moments = event.getSession().getService().getInstantiator().getOrCreate(ListMoments.class);
        Shown shown = shown(page, event.getSession());
        try {
            moments.read(electionId, moment -> write(format, moment, shown, event.getOutputStream()));
        } catch (NotPermittedException e) {
            refuse(answer, e);
        }
    }

    /** What the page shows now: nobody narrows it otherwise while this is asked. It is read only afterwards. */
    private Shown shown(Supplier<Supplier<? extends ListedRows>> page, VaadinSession session) {
        session.lock();
        try {
            String words = filter.get();
            return new Shown(words.isEmpty() ? "none" : words, page.get());
        } finally {
            session.unlock();
        }
    }

    private record Shown(String filter, Supplier<? extends ListedRows> rows) {}

    /** Nobody gets an empty file where they may have none. */
    private static void refuse(VaadinResponse answer, NotPermittedException why) {
        try {
            answer.sendError(HttpStatusCode.FORBIDDEN.getCode(), String.valueOf(why.getMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(TableFormat format, ListMoments.ListMoment moment, Shown shown, OutputStream out) {
        ListedRows list = shown.rows().get();
        TableHead head = new TableHead(
                title,
                List.of(
                        new TableHead.About("Election", moment.election()),
                        new TableHead.About("Listed at", moment.listedAt()),
                        new TableHead.About("Filter", shown.filter()),
                        new TableHead.About("Ledger head", moment.ledgerHead())),
                list.columns());
        try {
            format.write(head, out, rows -> list.each(rows::row));
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
