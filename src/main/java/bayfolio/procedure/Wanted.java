package bayfolio.procedure;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.model.Switch;
import bayfolio.model.Wording;
import bayfolio.prose.Block;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The state in which a step wants a switch, or only that it is worked. */
enum Wanted {
    ON(Switch.WORK, Switch.ON_LOOK),
    OFF(Switch.WORK_OFF, Switch.OFF_LOOK),
    OPEN(Switch.WORK, Switch.ON_LOOK),
    SHUT(Switch.WORK_OFF, Switch.OFF_LOOK),
    /** Moved, held or set: it has no state that lasts. */
    WORK(Switch.WORK),
    /** How it stands at some moment, in the words of the description, which may name a state. */
    AT_PICKUP(Switch.AT_PICKUP),
    DRIVING(Switch.DRIVING),
    STORED(Switch.STORED),
    RETURNED(Switch.RETURNED);

    /** A shorter wait is none. */
    private static final double SOON = 3;

    private final Key<String> tells;
    private final Optional<Key<String>> look;
    private final Pattern named = Pattern.compile("\\b" + word() + "\\b", Pattern.CASE_INSENSITIVE);

    Wanted(Key<String> work, Key<String> look) {
        this.tells = work;
        this.look = Optional.of(look);
    }

    Wanted(Key<String> moment) {
        this.tells = moment;
        this.look = Optional.empty();
    }

    static Optional<Wanted> named(String word) {
        return Stream.of(values()).filter(it -> it.word().equals(word)).findFirst();
    }

    static List<String> words() {
        return Stream.of(values()).map(Wanted::word).toList();
    }

    String word() {
        return Type.word(this);
    }

    /** What the description says of a switch in this state; what it does not say is left out. */
    Block.Handled of(Switch handled, Wording wording) {
        Facts facts = handled.facts();
        Pieces pieces = new Pieces();
        boolean moment = look.isEmpty() && this != WORK;
        List<Wanted> states = moment ? states(facts) : List.of(this);
        if (moment) {
            pieces.add(Block.Sort.STATE, word(), facts.find(tells).map(Wanted::sentence));
        }
        pieces.add(Block.Sort.PLATE, "", facts.find(Switch.PLATE));
        boolean one = states.size() == 1;
        if (one) {
            Wanted state = states.get(0);
            pieces.add(Block.Sort.ACT, "", facts.find(state.tells).map(Wanted::sentence));
            pieces.add(
                    Block.Sort.HOLD,
                    "",
                    facts.find(Switch.HOLD)
                            .filter(hold -> state.tells == Switch.WORK)
                            .map(hold -> wording.of(Switch.HOLD.type(), hold)));
        }
        states.forEach(state -> pieces.add(Block.Sort.LOOK, state.word(), state.looks(facts)));
        if (one) {
            Optional<String> right = states.get(0).looks(facts);
            // One that shows nothing looks the same in both.
            states.get(0)
                    .opposite()
                    .ifPresent(wrong -> pieces.add(
                            Block.Sort.WRONG,
                            wrong.word(),
                            wrong.looks(facts).filter(words -> !right.equals(Optional.of(words)))));
            pieces.add(
                    Block.Sort.AFTER,
                    "",
                    facts.find(Switch.DELAY)
                            .filter(delay -> right.isPresent() && delay.value() >= SOON)
                            .map(delay -> wording.of(Switch.DELAY.type(), delay)));
        }
        return new Block.Handled(
                new Target.OfThing(handled.kind(), handled.id()),
                handled.name(),
                word(),
                pieces.all,
                Stream.concat(Stream.of(this), states.stream())
                        .flatMap(state -> Stream.concat(Stream.of(state.tells), state.look.stream()))
                        .distinct()
                        .filter(key -> !facts.has(key))
                        .map(Key::name)
                        .toList());
    }

    /** Those that the description names for this moment. */
    private List<Wanted> states(Facts facts) {
        return Stream.of(values())
                .filter(state -> state.look.isPresent())
                .filter(state -> facts.find(tells)
                        .filter(words -> state.named.matcher(words).find())
                        .isPresent())
                .toList();
    }

    private Optional<String> looks(Facts facts) {
        return look.flatMap(facts::find).map(Wanted::sentence);
    }

    private Optional<Wanted> opposite() {
        return switch (this) {
            case ON -> Optional.of(OFF);
            case OFF -> Optional.of(ON);
            case OPEN -> Optional.of(SHUT);
            case SHUT -> Optional.of(OPEN);
            case WORK, AT_PICKUP, DRIVING, STORED, RETURNED -> Optional.empty();
        };
    }

    /** However the description begins and ends it. */
    private static String sentence(String words) {
        String text = words.strip();
        int second = text.offsetByCodePoints(0, 1);
        String capital = text.substring(0, second).toUpperCase(Locale.ROOT) + text.substring(second);
        return ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? capital : capital + ".";
    }

    private static final class Pieces {
        private final List<Block.Piece> all = new ArrayList<>();

        private void add(Block.Sort sort, String state, Optional<String> words) {
            words.ifPresent(it -> all.add(new Block.Piece(sort, state, it)));
        }
    }
}
