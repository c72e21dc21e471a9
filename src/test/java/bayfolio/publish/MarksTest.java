package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.From;
import bayfolio.document.Handbook;
import bayfolio.document.Page;
import bayfolio.document.PageKind;
import bayfolio.document.Stamp;
import bayfolio.explain.Begin;
import bayfolio.prose.Inline;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Marks of a handbook are held against where its parts came from. */
final class MarksTest {
    private static final Place AT = Place.whole(new SourceFile("units/plover/unit.yaml", "id: plover\n"));

    private final Stamp home = new Stamp(PageKind.HOME.node(), Audience.EVERYBODY, From.PROGRAM, "en-US");
    private final From secret = new From(List.of(new From.Source(From.Sort.FACT, "switch/pump/checked-by", true, AT)));

    @Test
    void whatComesOfSomethingForStaffAndIsNotMarkedIsTold() {
        Stamp told = home.child("checked").from(secret);

        assertThat(Marks.of(
                        handbook(Content.Text.of(told, new Inline.Text("Jo"))).seenBy(Audience.RENTERS)))
                .containsExactly("plover/home#checked: comes of `switch/pump/checked-by` (units/plover/unit.yaml:1:1),"
                        + " which is for staff");
    }

    @Test
    void whatIsMarkedIsInNoRentersCopy() {
        Stamp kept = home.child("checked").from(secret).seenBy(Audience.STAFF);
        Handbook handbook = handbook(Content.Text.of(kept, new Inline.Text("Jo")));

        assertThat(Marks.of(handbook.seenBy(Audience.RENTERS))).isEmpty();
        assertThat(handbook.seenBy(Audience.RENTERS).find(kept.id())).isEmpty();
        assertThat(handbook.seenBy(Audience.STAFF).find(kept.id())).isPresent();
    }

    @Test
    void aPartIsNeverReadByMoreThanTheWhole() {
        Stamp staff = home.child("list").seenBy(Audience.STAFF);

        assertThat(staff.child("entry").seenBy(Audience.EVERYBODY).audience()).isEqualTo(Audience.STAFF);
    }

    @Test
    void twoPartsOfOneNameAreRefused() {
        Content text = Content.Text.of(home.child("note"), new Inline.Text("One"));

        assertThatThrownBy(() -> handbook(text, text))
                .hasMessage("two parts of the handbook of plover are named home#note");
    }

    @Test
    void aQuoteOfAPageThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> handbook(
                        new Content.Quote(home.child("quote"), PageKind.QUESTION.node("runs-together"), Begin.USUAL)))
                .hasMessage("home#quote of plover quotes worked-out/runs-together, which is no page of it");
    }

    private Handbook handbook(Content... opening) {
        Page page = new Page(home, PageKind.HOME, PageKind.HOME.target(), "Plover", List.of(opening), List.of(), false);
        return new Handbook(
                "plover",
                new Handbook.Cover("Plover", "", "", Optional.empty()),
                "en-US",
                List.of(new Handbook.Part("start", List.of(page))),
                Map.of(),
                Map.of());
    }
}
