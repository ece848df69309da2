package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.util.Optional;
import org.proviso.intake.StoredImage;
import org.proviso.ui.ActButton;

/** The picture of an envelope's signature, larger or smaller; only the page it stands on can fetch it. */
final class Scan extends Div {

    private static final int[] WIDTHS = {100, 150, 225, 340};

    private int width;

    Scan(Optional<StoredImage> image) {
        addClassName("scan");
        add(new H2("The scan"));
        image.ifPresentOrElse(
                this::show,
                () -> add(new Paragraph("There is no scan of this envelope: key it from the paper. Scans come with the"
                        + " election's folder of files.")));
    }

    private void show(StoredImage image) {
        Image picture = new Image(
                DownloadHandler.fromInputStream(event -> new DownloadResponse(
                                new ByteArrayInputStream(image.content()),
                                "signature",
                                image.mediaType(),
                                image.content().length))
                        .inline(),
                "The voter's signature on the envelope");
        Div frame = new Div(picture);
        frame.addClassName("frame");
        frame.getElement().setAttribute("tabindex", "0");
        frame.getElement().setAttribute("role", "region");
        frame.getElement().setAttribute("aria-label", "The scan");
        Div acts = new Div(
                new ActButton("Larger", "+").quiet().does(() -> zoom(picture, 1)),
                new ActButton("Smaller", "-").quiet().does(() -> zoom(picture, -1)));
        acts.addClassName("acts");
        zoom(picture, 0);
        add(frame, acts);
    }

    private void zoom(Image picture, int by) {
        width = Math.max(0, Math.min(WIDTHS.length - 1, width + by));
        picture.setWidth(WIDTHS[width] + "%");
    }
}
