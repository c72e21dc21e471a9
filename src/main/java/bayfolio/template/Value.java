package bayfolio.template;

import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.List;
import java.util.Optional;

/** What stands behind a name of a template. What was written says where, for whoever asks for more than the text. */
public sealed interface Value {

    /**
     * Printed, escaped for what the template makes.
     *
     * @param fact what was written; nothing where the text is made of other things
     */
    record Text(String text, Optional<Located<?>> fact) implements Value {
        public Text(String text) {
            this(text, Optional.empty());
        }
    }

    /** Chooses between a section and its inverse. */
    record Flag(boolean yes, Optional<Located<?>> fact) implements Value {
        public Flag(boolean yes) {
            this(yes, Optional.empty());
        }
    }

    /** Names within a name: {@code unit} in {@code unit.size.height}. */
    record Inner(Names names, Optional<Located<?>> fact) implements Value {
        public Inner(Names names) {
            this(names, Optional.empty());
        }
    }

    /**
     * Repeats a section. One alone may also be asked for its names directly: {@code
     * tank.gray.capacity}.
     *
     * @param what in words, for messages
     */
    record Many(String what, List<Value> each) implements Value {
        public Many {
            each = List.copyOf(each);
        }
    }

    /** Text that others wrote, printed as it stands: of templates filled in with the names around, each with its places. */
    record Pieces(List<Piece> pieces) implements Value {
        public Pieces {
            pieces = List.copyOf(pieces);
        }

        /** One after the other. */
        public sealed interface Piece {}

        /** As it is. */
        public record Written(String text, Place at) implements Piece {}

        /** Filled in where it is printed. */
        public record Filled(Template template) implements Piece {}
    }

    /**
     * A name that exists, with nothing behind it here: false for a section, a finding when printed.
     *
     * @param why one sentence without a full stop
     * @param mend what to do about it
     */
    record Absent(String why, String mend) implements Value {}

    /**
     * A name that exists and that this text may not ask for: a finding wherever it stands, in a section too.
     *
     * @param why one sentence without a full stop
     * @param mend what to do about it
     */
    record Withheld(String why, String mend) implements Value {}

    /** There is no such name. */
    record Unknown() implements Value {}
}
