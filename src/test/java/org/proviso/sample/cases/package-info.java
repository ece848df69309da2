/** What can be wrong with an envelope, or only look wrong: each case with the outcome that is right for it. */
@NullMarked
package org.proviso.sample.cases;

import org.jspecify.annotations.NullMarked;
