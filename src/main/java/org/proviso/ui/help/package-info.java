/** Help beside each page, the words of the office and the guides, all from text files. */
@NamedInterface("help")
@NullMarked
package org.proviso.ui.help;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
