/** Bookings, as the program with which they are kept gives them out; they are read and never kept. */
@NullMarked
package bayfolio.bookings;

import org.jspecify.annotations.NullMarked;
