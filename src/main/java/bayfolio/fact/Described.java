package bayfolio.fact;

/** A record made of the facts that a description states. */
public interface Described {
    Facts facts();
}
