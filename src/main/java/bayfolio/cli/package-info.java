/**
 * The command line: one class a command, and nothing that thinks. Begin at {@link
 * bayfolio.cli.Bayfolio}.
 */
@NullMarked
package bayfolio.cli;

import org.jspecify.annotations.NullMarked;
