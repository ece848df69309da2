/**
 * Reading and writing CSV: rows, columns, cells, and what is wrong with them by file, line and column.
 * Nothing here knows what a file is about.
 */
@NamedInterface("csv")
@NullMarked
package org.proviso.files.csv;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
