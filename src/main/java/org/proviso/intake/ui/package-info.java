/** The pages of intake: what came in, receiving, keying, and what voters bring. */
@NullMarked
package org.proviso.intake.ui;

import org.jspecify.annotations.NullMarked;
