/** Which column of an office's own file is which of ours: seen, corrected, and taken along. */
@NullMarked
package org.proviso.setup.columns;

import org.jspecify.annotations.NullMarked;
