/** What comes of an act: what is new by it, or why it cannot be done now. Every service answers with these types. */
@NullMarked
package org.proviso.core.act;

import org.jspecify.annotations.NullMarked;
