/** Messages to renters in the forms of mail, calendars and address books. */
@NullMarked
package bayfolio.render.mail;

import org.jspecify.annotations.NullMarked;
