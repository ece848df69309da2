/** A case in words that a reviewer reads aloud: what the envelope says, what the records say, what the law asks. */
@NullMarked
package org.proviso.core.adjudication.explain;

import org.jspecify.annotations.NullMarked;
