package bayfolio;

import bayfolio.cli.Bayfolio;

/** The door. */
public final class Main {
    private Main() {}

    public static void main(String[] words) {
        int exit = Bayfolio.run(words);
        if (exit != 0) {
            System.exit(exit);
        }
    }
}
