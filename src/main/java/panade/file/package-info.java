/** Files written all or nothing, with the rights and links they had; knows nothing of their contents. */
@NullMarked
package panade.file;

import org.jspecify.annotations.NullMarked;
