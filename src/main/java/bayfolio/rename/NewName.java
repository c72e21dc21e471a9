package bayfolio.rename;

import bayfolio.model.Unit;
import bayfolio.procedure.Mentions;
import bayfolio.procedure.Script;
import bayfolio.read.Scalars;
import bayfolio.source.Steps;
import java.util.List;
import java.util.Optional;

/** What gets another name, and where it is that which is meant by the name. */
interface NewName {
    /** The name so far. */
    String before();

    String after();

    /** What it is, in words: {@code switch `pump`}. */
    String called();

    /** All files that may speak of it. */
    List<Description> descriptions();

    /** Folders below which a file that may speak of it lies. */
    List<String> folders();

    /** Whether a text may speak of it. */
    boolean concerns(Script script);

    /** Whether a value that reads like the name means it. */
    boolean means(Scalars.Scalar scalar, Description in);

    /** The same of what a text says, whatever its name. */
    boolean means(Mentions.Mention mention);

    /** Whether a value is where its name is given to it. */
    boolean gives(Scalars.Scalar scalar);

    /** The path of the file in which it is noted what it was called. */
    String home();

    /** The same way in a file in which it has its new name. */
    Steps moved(Steps way);

    /** A text of a fact, such as {@code switch/pump/name}, under its new name; empty where it is another one's. */
    Optional<String> moved(String factText);

    /** The key of work that is to be done about it, such as {@code stick-on/switch/pump}, under its new name. */
    String listed(String key);

    /** Whether its files say otherwise than before wherever they are those of this coach. */
    boolean concerns(Unit unit);
}
