/** Which messages are due for a booking, and which links go into each; nothing is sent, and nothing of it is published. */
@NullMarked
package bayfolio.mail;

import org.jspecify.annotations.NullMarked;
