package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import com.vaadin.flow.server.streams.UploadHandler;
import java.io.ByteArrayInputStream;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.proviso.files.InputException;
import org.proviso.intake.StoredImage;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;

/** The scan of an envelope's signature, with zoom. Only this page can fetch it. */
final class SignaturePicture extends Div {

    private static final int[] WIDTHS = {100, 150, 225, 340};

    private int width;

    /** {@code keep} takes the name and content of an added scan. A refusal is shown on the page. */
    SignaturePicture(Optional<StoredImage> image, BiConsumer<String, byte[]> keep) {
        addClassName("scan");
        add(new H2("Scan"));
        image.ifPresentOrElse(this::show, () -> showNone(keep));
    }

    private void showNone(BiConsumer<String, byte[]> keep) {
        Upload upload = new Upload(UploadHandler.inMemory((file, content) -> keep(keep, file.fileName(), content)));
        upload.setAcceptedFileTypes("image/png", "image/jpeg");
        upload.setMaxFiles(1);
        upload.setUploadButton(new ActButton("Add signature scan"));
        upload.setDropLabel(new Span("or drop it here"));
        add(
                new Paragraph("No scan of this envelope: key it from the paper. A signature scan helps the reviewer who"
                        + " compares signatures. PNG or JPEG."),
                upload);
    }

    private static void keep(BiConsumer<String, byte[]> keep, String name, byte[] content) {
        try {
            keep.accept(name, content);
        } catch (InputException e) {
            MessageLine.refused("Scan not saved. " + e.getMessage());
        }
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
        frame.getElement().setAttribute("aria-label", "Scan");
        Div acts = new Div(
                new ActButton("Zoom in", "+").quiet().does(() -> zoom(picture, 1)),
                new ActButton("Zoom out", "-").quiet().does(() -> zoom(picture, -1)));
        acts.addClassName("acts");
        zoom(picture, 0);
        add(frame, acts);
    }

    private void zoom(Image picture, int by) {
        width = Math.max(0, Math.min(WIDTHS.length - 1, width + by));
        picture.setWidth(WIDTHS[width] + "%");
    }
}
