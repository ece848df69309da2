/** Writing a list that a page shows as a file for a spreadsheet, CSV or XLSX, row by row. */
@NamedInterface("table")
@NullMarked
package org.proviso.files.table;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
