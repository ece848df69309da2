/** One case as a person reads it: the envelope, the records around it and the law, gathered in one reading. */
@NamedInterface("file")
@NullMarked
package org.proviso.review.file;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
