/** What makes an envelope hard to read: slips of the pen and of the keyboard, boxes left empty. */
@NullMarked
package org.proviso.sample.keying;

import org.jspecify.annotations.NullMarked;
