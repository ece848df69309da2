package org.proviso.review.ui.voters;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.FieldBeside;
import org.proviso.review.file.PossibleVoter;
import org.proviso.ui.PlainTable;

/** The envelope beside each record of the roll that may be its voter: signatures, name, date of birth, address. */
public final class CandidatesBeside extends Div {

    /** {@code signatures}: whether whoever looks may see whose signatures they are. */
    public CandidatesBeside(CaseFile file, boolean signatures) {
        addClassName("beside");
        List<PossibleVoter> voters = file.around().voters();
        PlainTable table = new PlainTable("The envelope and the records that may be its voter", headings(voters));
        for (FieldBeside.Field field : FieldBeside.Field.values()) {
            table.row(cells(
                    field.words(),
                    new Span(onEnvelope(voters.get(0), field)),
                    voters.stream().map(voter -> new FieldMark(of(voter, field)))));
        }
        if (signatures) {
            EnvelopeKey key = file.now().key();
            Component own = file.around().pictures().ofEnvelope()
                    ? picture(SignaturePictures.envelope(key), "The signature on the envelope")
                    : new Span("no scan");
            table.row(cells("Signature", own, voters.stream().map(voter -> onFile(key, voter))));
        }
        add(table);
    }

    private static String[] headings(List<PossibleVoter> voters) {
        return Stream.concat(
                        Stream.of("", "On the envelope"),
                        voters.stream()
                                .map(voter -> "Record " + voter.voter().voterId()
                                        + (voter.linked() ? ", linked" : voter.presumed() ? ", by the match" : "")))
                .toArray(String[]::new);
    }

    private static List<Component> cells(String field, Component own, Stream<? extends Component> records) {
        List<Component> cells = new ArrayList<>();
        Span term = new Span(field);
        term.addClassName("soft");
        cells.add(term);
        cells.add(own);
        records.forEach(cells::add);
        return cells;
    }

    private static FieldBeside of(PossibleVoter voter, FieldBeside.Field field) {
        return voter.fields().stream()
                .filter(beside -> beside.field() == field)
                .findFirst()
                .orElseThrow();
    }

    private static String onEnvelope(PossibleVoter voter, FieldBeside.Field field) {
        String said = of(voter, field).onEnvelope();
        return said.isBlank() ? "empty" : said;
    }

    private static Component onFile(EnvelopeKey key, PossibleVoter voter) {
        if (voter.onFile() == 0) {
            return new Span("no signature on file");
        }
        Div all = new Div();
        for (int place = 0; place < voter.onFile(); place++) {
            all.add(picture(
                    SignaturePictures.onFile(key, voter.voter().voterId(), place),
                    "A signature on file of record " + voter.voter().voterId()));
        }
        return all;
    }

    private static Component picture(String address, String heard) {
        Image image = new Image(address, heard);
        image.addClassName("small-signature");
        return image;
    }
}
