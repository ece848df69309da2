/** What an assessment was made from and what it said, as text that is kept and read back: the same bytes every time. */
@NullMarked
package org.proviso.core.adjudication.kept;

import org.jspecify.annotations.NullMarked;
