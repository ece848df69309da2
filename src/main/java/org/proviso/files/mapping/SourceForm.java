package org.proviso.files.mapping;

import java.nio.charset.Charset;
import java.util.List;

/**
 * How an office's file is written: its encoding, what stands between cells, whether cells may be in quotes, whether the
 * first row names the columns, and the columns. {@code layout} is for fixed width only.
 */
public record SourceForm(
        Charset encoding,
        Delimiter delimiter,
        boolean quoted,
        boolean header,
        List<String> columns,
        List<FixedColumn> layout) {

    public SourceForm {
        columns = List.copyOf(columns);
        layout = List.copyOf(layout);
    }

    SourceForm with(boolean isHeader, List<String> names) {
        return new SourceForm(encoding, delimiter, quoted, isHeader, names, layout);
    }
}
