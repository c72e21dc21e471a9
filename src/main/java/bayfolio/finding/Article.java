package bayfolio.finding;

/**
 * The article that a noun takes in a message: {@code a tank}, {@code an appliance}, {@code a unit}.
 */
public final class Article {
    private Article() {}

    public static String a(String noun) {
        boolean vowel = "aeiou".indexOf(noun.charAt(0)) >= 0 && !noun.startsWith("uni");
        return (vowel ? "an " : "a ") + noun;
    }
}
