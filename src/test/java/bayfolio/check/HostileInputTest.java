package bayfolio.check;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import com.sun.management.OperatingSystemMXBean;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What somebody writes who means no good is told at its place, and takes no more time than its length. */
class HostileInputTest {
    private static final String SCRIPT = "units/plover/procedures/hostile.md";

    private static final OperatingSystemMXBean PROCESS =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    @TempDir
    private Path folder;

    /** Each such as was seen to take the square of its length. */
    enum Text {
        OPEN_TAGS("{{", 40_000),
        OPEN_SECTIONS("{{#a", 40_000),
        OPEN_LINKS("[a](b", 50_000),
        OPEN_BRACKETS("[", 300_000),
        OPEN_LINKS_OF_KINDS("](page:", 50_000),
        ADDRESSES("<a:b>", 50_000),
        TAGS("{{nmae}} ", 40_000) {
            @Override
            int paragraphs() {
                return 4;
            }
        },
        LINKS("[](switch:none) ", 40_000) {
            @Override
            int paragraphs() {
                return 4;
            }
        },
        BACKTICKS("", 700_000) {
            @Override
            String of(int length) {
                StringBuilder text = new StringBuilder(length + 1_500);
                for (int run = 1; text.length() < length; run++) {
                    text.append("`".repeat(run)).append(' ');
                }
                return text.substring(0, length);
            }
        };

        private final String piece;
        private final int times;

        Text(String piece, int times) {
            this.piece = piece;
            this.times = times;
        }

        /** Fewer where each piece is a finding of its own. */
        int paragraphs() {
            return 40;
        }

        String of(int length) {
            return piece.repeat(1 + length / piece.length());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aLineWithoutEndIsToldAtItsPlace(Text text) throws Exception {
        write("1. Look at " + text.of(text.times * Math.max(1, text.piece.length())) + "\n");

        assertThat(told()).contains(SCRIPT + ":8:1: error: this line has ").contains("[unreadable-file]");
    }

    @ParameterizedTest
    @EnumSource
    void aParagraphWithoutEndIsToldWhereItBegins(Text text) throws Exception {
        String lines = IntStream.range(0, 50)
                .mapToObj(i -> "   " + text.of(900) + "\n")
                .collect(Collectors.joining());
        write("1. Look at\n" + lines);

        assertThat(told()).contains(SCRIPT + ":1:1: error: this paragraph has ").contains("[unreadable-file]");
    }

    /** Far above what growth with the length takes, about 0.5 s, and far below that with its square, 30 s. */
    @ParameterizedTest
    @EnumSource
    void linesAsLongAsTheyMayBeTakeNoMoreThanTheirLength(Text text) throws Exception {
        write(paragraphs(text, 9_500));

        long before = PROCESS.getProcessCpuTime();
        check();

        assertThat(Duration.ofNanos(PROCESS.getProcessCpuTime() - before)).isLessThan(Duration.ofSeconds(10));
    }

    @Test
    void aTextOfADescriptionWithoutEndIsToldAtItsPlace() throws Exception {
        DemoFleet.copy(DemoFleet.SMALL, folder);
        Path unit = folder.resolve("units/plover/unit.yaml");
        String before = Files.readString(unit);
        String lines = IntStream.range(0, 2_000).mapToObj(i -> "  go on\n").collect(Collectors.joining());
        Files.writeString(unit, before + "  - text:\n" + lines.replace("  ", "      ") + "    about: pump\n");

        assertThat(told())
                .contains("units/plover/unit.yaml:" + (before.lines().count() + 2) + ":7: error: this text has ")
                .contains("[unreadable-file]");
    }

    private static String paragraphs(Text text, int length) {
        return IntStream.range(0, text.paragraphs())
                .mapToObj(i -> "1. Look at " + text.of(length) + "\n\n")
                .collect(Collectors.joining());
    }

    private void write(String steps) throws Exception {
        DemoFleet.copy(DemoFleet.SMALL, folder);
        DemoFleet.write(
                folder.resolve(SCRIPT),
                "---\nid: hostile\ntitle: Try it\nstage: living\nwho: renter\nwhen: every coach\n---\n" + steps
                        + "\n## Done when\nDone.\n\n## If not\nCall us.\n");
    }

    private String told() {
        StringWriter out = new StringWriter();
        assertThat(check(out)).isEqualTo(1);
        return out.toString();
    }

    private void check() {
        check(new StringWriter());
    }

    private int check(StringWriter out) {
        return Folders.run(new PrintWriter(out), new PrintWriter(out), "check", "--fleet", folder.toString());
    }
}
