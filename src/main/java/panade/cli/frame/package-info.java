/** What every command shares: what it reads, where it prints, and the status it ends with. */
@NullMarked
package panade.cli.frame;

import org.jspecify.annotations.NullMarked;
